//! The sketch: the machine drawn to scale, from the side, from above or from behind.

mod surface;

use std::collections::HashMap;

use iced::widget::canvas::Cache;
use iced::widget::{Row, canvas, column, container, text};
use iced::{Element, Fill, Length};

use super::{PICTURE, each, file_name, frame, saving};
use crate::app::desk::Desk;
use crate::app::page::{self, Page, Pictured};
use crate::app::settings::Settings;
use crate::app::theme::{self, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::symbol::unbroken;
use crate::asked;
use crate::lesson::{Block, BlockKind, Sketch as Asked};
use crate::plot::save::Figure;
use crate::plot::sketch::{Show, View, figure};
use crate::quantity::Units;
use crate::study::Sketch;

/// What is drawn of a build, and for which state of it.
#[derive(Default)]
pub struct State {
    drawn: Option<Drawn>,
    /// From where the reader looks, once they have chosen.
    view: Option<View>,
}

struct Drawn {
    sketch: Sketch,
    words: String,
    cache: Cache,
    revision: u64,
    units: Units,
    name: String,
    dark: bool,
    company: u64,
}

/// Draws anew the sketches of a page that the last change has made stale.
pub fn refresh(
    states: &mut HashMap<usize, State>,
    blocks: &[Block],
    desk: &Desk,
    settings: &Settings,
    dark: bool,
) {
    each(blocks, &mut |block| {
        if let BlockKind::Sketch(_) = &block.kind {
            states.entry(block.line).or_default().refresh(desk, settings, dark);
        }
    });
}

impl State {
    /// Draws anew what the last change of numbers, units or light has made stale.
    pub fn refresh(&mut self, desk: &Desk, settings: &Settings, dark: bool) {
        let name = desk.name();
        let fresh = self.drawn.as_ref().is_some_and(|drawn| {
            drawn.revision == desk.revision()
                && drawn.units == settings.units
                && drawn.name == name
                && drawn.dark == dark
                && drawn.company == desk.company.changes()
        });
        if fresh {
            return;
        }
        let mut sketch = Sketch::of(&name, desk.sheet(), &desk.tally, &desk.outcome.values);
        if let Some(beside) = desk.company.all().first() {
            let tally = beside.sheet.tally();
            let values = &beside.outcome.values;
            sketch = sketch.with_ghost(Sketch::of(&beside.name, &beside.sheet, &tally, values));
        }
        self.drawn = Some(Drawn {
            words: unbroken(&sketch.in_words(&settings.units)).into_owned(),
            sketch,
            cache: Cache::new(),
            revision: desk.revision(),
            units: settings.units.clone(),
            name,
            dark,
            company: desk.company.changes(),
        });
    }

    /// The sketch as a file may hold it, seen and shown so, and a name for that file.
    pub fn figure(&self, how: (View, Show)) -> Option<(Figure, String)> {
        let drawn = self.drawn.as_ref()?;
        let name = file_name(&format!("sketch {}", drawn.name));
        Some((figure(&drawn.sketch, how, &drawn.units, PICTURE), name))
    }

    /// Looks from elsewhere.
    pub fn look(&mut self, view: View) {
        self.view = Some(view);
        if let Some(drawn) = &self.drawn {
            drawn.cache.clear();
        }
    }
}

/// A sketch that starts on `line` of its lesson.
pub fn view<'a>(asked: &'a Asked, line: usize, page: Page<'a>) -> Element<'a, page::Message> {
    let Some(state) = page.marks.sketches.get(&line) else {
        return frame(asked.title.as_deref(), text(""));
    };
    let (first, show) = asked::sketch(asked);
    let height = page.tall((0.62 * page.width).clamp(250.0, 350.0));
    let inside = picture(state, (first, show), height, move |view| page::Message::Look(line, view));
    let inside = container(inside).id(format!("sketch:{line}"));
    let drawn = state.drawn.as_ref().filter(|drawn| !drawn.sketch.is_empty());
    let view = state.view.unwrap_or(first);
    let save = drawn.map(|_| saving("Save the sketch", (line, Pictured::Sketch(view, show)), page));
    frame(asked.title.as_deref(), column![inside, save].spacing(UNIT))
}

/// The drawing with the same in words under it, and a choice of where to look from.
pub fn picture<'a, Message: Clone + 'a>(
    state: &'a State,
    (first, show): (View, Show),
    height: f32,
    on_look: impl Fn(View) -> Message + 'a,
) -> Element<'a, Message> {
    let Some(drawn) = &state.drawn else { return text("").into() };
    let view = state.view.unwrap_or(first);
    let lacking = drawn.sketch.lacking_in_words(view == View::Side);
    let lacking = lacking.map(|words| text(words).size(size::LABEL).style(theme::warning));
    if drawn.sketch.is_empty() {
        let nothing = format!("There is nothing of {} to draw yet.", drawn.name);
        return column![text(nothing).size(size::LABEL), lacking].spacing(UNIT).into();
    }
    let ways =
        [(View::Side, "From the side"), (View::Top, "From above"), (View::Rear, "From behind")];
    let ways = ways.map(|(way, words)| {
        pressable(Kind::Line(way == view), text(words).size(size::LABEL))
            .on_press(on_look(way))
            .into()
    });
    let surface = surface::Surface {
        sketch: &drawn.sketch,
        units: &drawn.units,
        cache: &drawn.cache,
        how: (view, show),
    };
    let notes = drawn.sketch.notes_in_words(view == View::Side, show.parts);
    let notes = text(notes).size(size::SMALL).style(theme::soft).width(Fill);
    column![
        Row::with_children(ways).spacing(UNIT / 2.0).width(Fill).wrap(),
        canvas(surface).width(Fill).height(Length::Fixed(height)),
        text(drawn.words.as_str()).size(size::LABEL).width(Fill),
        lacking,
        notes,
    ]
    .spacing(UNIT)
    .into()
}
