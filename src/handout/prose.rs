//! Running text on paper: the same blocks as on the screen, live numbers filled in.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use maud::{Markup, PreEscaped, html};

use super::{Ink, block};
use crate::lesson::{AlertKind, Block, BlockKind, Span, Style, Target};
use crate::plot::formula::{ROOM, formula};
use crate::quantity::{UnitSet, catalogue};

/// Blocks one under the other.
pub(super) fn blocks(blocks: &[Block], ink: Ink<'_>) -> Markup {
    html! { @for block in blocks { (one(block, ink)) } }
}

pub(super) fn one(block: &Block, ink: Ink<'_>) -> Markup {
    match &block.kind {
        BlockKind::Heading { level, spans: words, .. } => match level {
            1 => html! { h1 { (spans(words, ink)) } },
            2 => html! { h2 { (spans(words, ink)) } },
            _ => html! { h3 { (spans(words, ink)) } },
        },
        BlockKind::Paragraph(words) => html! { p { (spans(words, ink)) } },
        BlockKind::List { start, items } => list(*start, items, ink),
        BlockKind::Quote(inner) => html! { blockquote { (blocks(inner, ink)) } },
        BlockKind::Alert { kind, blocks: inner } => alert(*kind, inner, ink),
        BlockKind::Table { header, rows, .. } => html! {
            table {
                thead { tr { @for cell in header { th { (spans(cell, ink)) } } } }
                tbody {
                    @for row in rows {
                        tr { @for cell in row { td { (spans(cell, ink)) } } }
                    }
                }
            }
        },
        BlockKind::Code { text, .. } => html! { pre { (text) } },
        BlockKind::Formula(tex) => html! { div.formula { (maths(tex, true)) } },
        BlockKind::Picture { file, alt } => picture(file, alt, ink),
        BlockKind::Rule => html! { hr; },
        BlockKind::Footnote { name, blocks: inner } => html! {
            div.small { b { (name) ". " } (blocks(inner, ink)) }
        },
        BlockKind::Deeper(deeper) => html! {
            div.box { h3 { (spans(&deeper.title, ink)) } (blocks(&deeper.blocks, ink)) }
        },
        BlockKind::Answers(inner) if ink.key => html! {
            div.box { p.kind { "The answers" } (blocks(inner, ink)) }
        },
        BlockKind::Teacher(inner) if ink.key => html! {
            div.box { p.kind { "For the teacher" } (blocks(inner, ink)) }
        },
        BlockKind::Answers(_) | BlockKind::Teacher(_) => html! {},
        BlockKind::Broken { name, .. } => html! {
            div.box { p { "The lesson has a " (name) " here that cannot be read." } }
        },
        live => block::live(live, ink),
    }
}

fn list(start: Option<u64>, items: &[Vec<Block>], ink: Ink<'_>) -> Markup {
    let each = html! { @for item in items { li { (blocks(item, ink)) } } };
    match start {
        Some(first) => html! { ol start=(first) { (each) } },
        None => html! { ul { (each) } },
    }
}

fn alert(kind: AlertKind, inner: &[Block], ink: Ink<'_>) -> Markup {
    let (word, urgent) = match kind {
        AlertKind::Caution => ("Caution", true),
        AlertKind::Warning => ("Warning", true),
        AlertKind::Important => ("Important", false),
        AlertKind::Tip => ("Try this", false),
        AlertKind::Note => ("Note", false),
    };
    let class = if urgent { "box caution" } else { "box" };
    html! { div class=(class) { p.kind { (word) } (blocks(inner, ink)) } }
}

fn picture(file: &str, alt: &str, ink: Ink<'_>) -> Markup {
    let kind = if file.to_lowercase().ends_with(".png") { "image/png" } else { "image/svg+xml" };
    html! {
        figure {
            @if let Some(bytes) = (ink.picture)(file) {
                img alt=(alt) src=(format!("data:{kind};base64,{}", STANDARD.encode(&bytes)));
            }
            figcaption { (alt) }
        }
    }
}

/// Spans as running text.
pub(super) fn spans(spans: &[Span], ink: Ink<'_>) -> Markup {
    html! { @for span in spans { (span_of(span, ink)) } }
}

fn span_of(span: &Span, ink: Ink<'_>) -> Markup {
    match span {
        Span::Text { text, style } => styled(text, *style),
        Span::Formula(tex) => maths(tex, false),
        Span::Break => html! { br; },
        Span::FootnoteRef(name) => html! { sup { "[" (name) "]" } },
        Span::Link { to, spans: words } => match to {
            Target::Live { id, unit } => {
                let shown = ink.subject.si(*id).and_then(|si| {
                    let entry = catalogue::find(id.name())?;
                    let unit = unit.as_deref().filter(|_| ink.units.set == UnitSet::Metric);
                    let chosen = unit.and_then(|unit| ink.units.show_in(entry, si, unit).ok());
                    Some(chosen.unwrap_or_else(|| ink.units.show(entry, si)).to_string())
                });
                html! { b { (shown.unwrap_or_else(|| "(not known yet)".to_owned())) } }
            }
            Target::Web(address) => html! { (spans(words, ink)) " (" (address) ")" },
            _ => self::spans(words, ink),
        },
    }
}

fn styled(text: &str, style: Style) -> Markup {
    let mut out = html! { (text) };
    if style.code {
        out = html! { code { (out) } };
    }
    if style.emphasis {
        out = html! { em { (out) } };
    }
    if style.strong {
        out = html! { strong { (out) } };
    }
    if style.strikethrough {
        out = html! { s { (out) } };
    }
    out
}

/// How much larger an em of the formulas is set, so that their letters match the text's.
const MATHS: f32 = 1.1;

/// A formula on the baseline of the text, as a picture with its TeX as its words.
pub(super) fn maths(tex: &str, on_its_own: bool) -> Markup {
    let Some(drawn) = formula(tex, on_its_own) else { return html! { code { (tex) } } };
    let (width, height) = (drawn.width + 2.0 * ROOM, drawn.height + drawn.depth + 2.0 * ROOM);
    let style = format!(
        "width:{:.3}em;height:{:.3}em;vertical-align:{:.3}em",
        width * MATHS,
        height * MATHS,
        -(drawn.depth + ROOM) * MATHS
    );
    let source = format!("data:image/svg+xml;base64,{}", STANDARD.encode(&drawn.svg));
    PreEscaped(html! { img alt=(tex) style=(style) src=(source); }.into_string())
}
