//! What else moved: what the last change did everywhere else, whichever lesson it belongs to.

use iced::widget::{Row, column, container, row, scrollable, text};
use iced::{Element, Fill, Length};

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::app::shell::Message;
use crate::app::theme::{self, SEMIBOLD, UNIT, size};
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::symbol;
use crate::quantity::catalogue;
use crate::study::Moved;

/// The height of the strip: it keeps it while numbers come and go.
const HEIGHT: f32 = 64.0;
/// The same where every line of the window counts: without its title.
const LOW: f32 = 48.0;
/// The height when all that moved is shown.
const OPEN: f32 = 220.0;
/// The width of one number that moved.
const ONE: f32 = 256.0;
/// From this width of the window on, there is room for the title beside a number.
const TITLED: f32 = 440.0;

/// The strip, on the foot of every screen of a `width`; `open` shows all of it.
pub fn view<'a>(
    desk: &'a Desk,
    settings: &'a Settings,
    width: f32,
    open: bool,
) -> Element<'a, Message> {
    let tight = width < theme::TIGHT;
    let room = ((width - 220.0) / (ONE + UNIT)).max(1.0) as usize;
    let rest = desk.moved.len().saturating_sub(room);
    let shown = if open { desk.moved.len() } else { room };
    let each = desk.moved.iter().take(shown).filter_map(|moved| one(moved, settings));
    let numbers = Row::with_children(each).spacing(UNIT).width(Fill);
    let inside: Element<'a, Message> = if desk.moved.is_empty() {
        let words = if desk.revision() == 0 && tight {
            "Nothing has moved yet."
        } else if desk.revision() == 0 {
            "Change any number: what it moves in every lesson shows here."
        } else {
            "The last change moved no headline number."
        };
        text(words).size(size::LABEL).style(theme::soft).width(Fill).into()
    } else if open {
        scrollable(numbers.wrap().vertical_spacing(UNIT))
            .id("strip-all")
            .direction(theme::bar())
            .style(theme::scroll)
            .into()
    } else {
        numbers.into()
    };
    let more = (open || rest > 0).then(|| {
        let words = if open { "Fewer".to_owned() } else { format!("{rest} more") };
        pressable(Kind::Word, text(words).size(size::SMALL)).on_press(Message::StripTurned)
    });
    let title = (width >= TITLED)
        .then(|| text("What else\nmoved").size(size::LABEL).font(SEMIBOLD).width(72));
    let (padding, low) = if tight { ([2.0, UNIT], LOW) } else { ([UNIT, 2.0 * UNIT], HEIGHT) };
    container(
        row![title, inside, more]
            .spacing(if tight { UNIT / 2.0 } else { 1.5 * UNIT })
            .align_y(iced::Center),
    )
    .id("strip")
    .style(theme::panel)
    .padding(padding)
    .height(if open { if tight { 2.5 * LOW } else { OPEN } } else { low })
    .width(Fill)
    .align_y(iced::Center)
    .into()
}

fn one<'a>(moved: &Moved, settings: &'a Settings) -> Option<Element<'a, Message>> {
    let entry = catalogue::find(moved.id.name())?;
    let shown = |si: Option<f64>| {
        si.map_or_else(|| "not known".to_owned(), |si| settings.units.show(entry, si).to_string())
    };
    let label = text(symbol::capitalised(entry.label))
        .size(size::SMALL)
        .style(theme::soft)
        .wrapping(iced::widget::text::Wrapping::None);
    Some(
        container(
            column![
                label,
                row![
                    text(format!("{} →", shown(moved.before))).size(size::LABEL),
                    text(shown(moved.after)).size(size::LABEL).font(SEMIBOLD),
                    text(moved.in_words()).size(size::SMALL).style(theme::soft),
                ]
                .spacing(UNIT / 2.0)
                .align_y(iced::Center),
            ]
            .spacing(2),
        )
        .width(Length::Fixed(ONE))
        .clip(true)
        .into(),
    )
}
