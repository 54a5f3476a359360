//! Running text that wraps, with formulas on the baseline and links that take the focus.

use iced::widget::{Row, rich_text, row, span, text};
use iced::{Element, Fill, Font};

use super::footnote_id;
use crate::app::desk::Desk;
use crate::app::page::{Message, Page};
use crate::app::settings::Settings;
use crate::app::theme::{BOLD, ITALIC, LEADING, REGULAR, SEMIBOLD};
use crate::app::widget::formula;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::symbol::unbroken;
use crate::lesson::{Span, Style, Target};
use crate::quantity::{AnyId, UnitSet, catalogue};

/// The width of a space of the shipped family, in em.
const SPACE: f32 = 0.236;

/// Spans as running text of a size.
pub fn flow(spans: &[Span], size: f32, page: Page<'_>) -> Element<'static, Message> {
    let simple = spans.iter().all(|span| matches!(span, Span::Text { .. } | Span::Break));
    if simple { rich(spans, size) } else { pieces(spans, size, page) }
}

/// The mark of a footnote, which shows it in the margin.
fn footnote_mark(name: &str, size: f32) -> Element<'static, Message> {
    pressable(Kind::Word, text(format!("[{name}]")).size(size * 0.8))
        .id(footnote_id(name))
        .on_press(Message::Footnote { name: name.to_owned(), back: false })
        .into()
}

/// The words of spans as the reader sees them, live numbers being those of the build.
pub fn spoken(spans: &[Span], desk: &Desk, settings: &Settings) -> String {
    spans
        .iter()
        .map(|span| match span {
            Span::Link { to: Target::Live { id, unit }, .. } => {
                live(*id, unit.as_deref(), desk, settings)
            }
            other => plain(std::slice::from_ref(other)),
        })
        .collect()
}

/// The words of spans without style, live numbers as the author wrote them.
pub fn plain(spans: &[Span]) -> String {
    spans
        .iter()
        .map(|span| match span {
            Span::Text { text, .. } => text.clone(),
            Span::Formula(tex) => tex.clone(),
            Span::Link { spans, .. } => plain(spans),
            Span::Break => " ".to_owned(),
            Span::FootnoteRef(_) => String::new(),
        })
        .collect()
}

fn font(style: Style) -> Font {
    match style {
        Style { strong: true, .. } => BOLD,
        Style { emphasis: true, .. } => ITALIC,
        Style { code: true, .. } => SEMIBOLD,
        _ => REGULAR,
    }
}

fn rich(spans: &[Span], size: f32) -> Element<'static, Message> {
    let spans: Vec<iced::widget::text::Span<'static, ()>> = spans
        .iter()
        .map(|part| match part {
            Span::Text { text, style } => span(unbroken(text).into_owned())
                .font(font(*style))
                .strikethrough(style.strikethrough),
            _ => span("\n"),
        })
        .collect();
    rich_text(spans).size(size).line_height(LEADING).width(Fill).into()
}

/// One word, formula or link, with whatever stands against it without a space.
#[derive(Default)]
struct Piece {
    atoms: Vec<Element<'static, Message>>,
}

impl Piece {
    fn element(mut self) -> Option<Element<'static, Message>> {
        match self.atoms.len() {
            0 => None,
            1 => self.atoms.pop(),
            _ => Some(Row::with_children(self.atoms).into()),
        }
    }
}

fn pieces(spans: &[Span], size: f32, page: Page<'_>) -> Element<'static, Message> {
    let mut lines: Vec<Vec<Element<'static, Message>>> = vec![Vec::new()];
    let mut piece = Piece::default();
    for part in spans {
        match part {
            Span::Text { text: words, style } => {
                for (place, word) in unbroken(words).split(' ').enumerate() {
                    if place > 0 {
                        close(&mut lines, &mut piece);
                    }
                    if !word.is_empty() {
                        piece.atoms.push(
                            text(word.to_owned())
                                .font(font(*style))
                                .size(size)
                                .line_height(LEADING)
                                .into(),
                        );
                    }
                }
            }
            Span::Formula(tex) => piece.atoms.push(formula::inline(tex, size)),
            Span::Link { to, spans } => piece.atoms.push(link(to, spans, size, page)),
            Span::FootnoteRef(name) => piece.atoms.push(footnote_mark(name, size)),
            Span::Break => {
                close(&mut lines, &mut piece);
                lines.push(Vec::new());
            }
        }
    }
    close(&mut lines, &mut piece);
    let rows = lines.into_iter().map(|line| {
        Row::with_children(line).spacing(size * SPACE).width(Fill).wrap().vertical_spacing(0).into()
    });
    iced::widget::Column::with_children(rows).width(Fill).into()
}

fn close(lines: &mut [Vec<Element<'static, Message>>], piece: &mut Piece) {
    if let (Some(line), Some(element)) = (lines.last_mut(), std::mem::take(piece).element()) {
        line.push(element);
    }
}

fn link(to: &Target, spans: &[Span], size: f32, page: Page<'_>) -> Element<'static, Message> {
    let words = match to {
        Target::Live { id, unit } => live(*id, unit.as_deref(), page.desk, page.settings),
        _ => plain(spans),
    };
    if let Target::Unknown(_) = to {
        return text(words).size(size).line_height(LEADING).into();
    }
    let font = if matches!(to, Target::Live { .. }) { SEMIBOLD } else { REGULAR };
    pressable(Kind::Word, row![text(words).font(font).size(size).line_height(LEADING)])
        .on_press(Message::Follow(to.clone()))
        .into()
}

/// A number of the reader's build, or that it is not known yet.
fn live(id: AnyId, unit: Option<&str>, desk: &Desk, settings: &Settings) -> String {
    let (Some(entry), Some(si)) = (catalogue::find(id.name()), desk.outcome.values.si(id)) else {
        return "(not known yet)".to_owned();
    };
    let units = &settings.units;
    unit.filter(|_| units.set == UnitSet::Metric)
        .and_then(|unit| units.show_in(entry, si, unit).ok())
        .unwrap_or_else(|| units.show(entry, si))
        .to_string()
}
