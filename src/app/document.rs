//! A lesson's blocks as elements: headings, running text, lists, tables, notes and pictures.

mod flow;
mod table;

use iced::widget::{column, container, row, rule, text};
use iced::{Element, Fill, Length, Padding};

use crate::app::block::{
    calculator, curve, deeper, faded, guess, hundred_grams, ledger, levers, measure, run,
    side_by_side, sketch, target,
};
use crate::app::page::{Audience, Message, Page};
use crate::app::theme::{self, BOLD, LEADING, SEMIBOLD, UNIT, size};
use crate::app::widget::kept::kept;
use crate::app::widget::pressable::{Kind, pressable};
use crate::app::widget::{formula, picture};
use crate::lesson::{AlertKind, Block, BlockKind, Span, Target};

pub use flow::{flow, plain, spoken};

/// The name a heading is found by, to scroll to it.
pub fn heading_id(anchor: &str) -> String {
    format!("heading:{anchor}")
}

/// Blocks one under the other.
pub fn blocks<'a>(blocks: &'a [Block], page: Page<'a>) -> Element<'a, Message> {
    let mut stack = column![].spacing(2.0 * UNIT).width(Fill);
    let notes = page.audience == Audience::Class { notes: true };
    let hidden = |block: &&Block| notes || !matches!(block.kind, BlockKind::Teacher(_));
    for block in blocks.iter().filter(hidden) {
        stack = stack.push(one(block, page));
    }
    stack.into()
}

fn one<'a>(block: &'a Block, page: Page<'a>) -> Element<'a, Message> {
    match &block.kind {
        BlockKind::Heading { level, anchor, spans } => heading(*level, anchor, &plain(spans)),
        BlockKind::Paragraph(spans) => paragraph(spans, page),
        BlockKind::List { start, items } => list(*start, items, page),
        BlockKind::Quote(inner) => {
            container(blocks(inner, page)).padding(Padding::ZERO.left(2.0 * UNIT)).into()
        }
        BlockKind::Alert { kind, blocks: inner } => alert(*kind, inner, page),
        BlockKind::Table { alignments, header, rows } => {
            let of = (
                alignments,
                header,
                rows,
                told(header.iter().chain(rows.iter().flatten()).flatten(), page),
            );
            kept(of, move || table::table(alignments, header, rows, page))
        }
        BlockKind::Code { text: code, .. } => container(text(code.as_str()).size(size::SMALL))
            .style(theme::block)
            .padding(UNIT)
            .into(),
        BlockKind::Formula(tex) => container(formula::display(tex, 20.0))
            .center_x(Fill)
            .padding(Padding::from([UNIT, 0.0]))
            .into(),
        BlockKind::Picture { file, alt } => figure(file, alt, page),
        BlockKind::Rule => rule::horizontal(1).style(theme::hairline).into(),
        BlockKind::Footnote { name, blocks: inner } => footnote(name, inner, page),
        BlockKind::Calculator(calculator) => calculator::view(calculator, block.line, page),
        BlockKind::Curve(curve) => curve::view(curve, block.line, page),
        BlockKind::Guess(guess) => guess::view(guess, page),
        BlockKind::Sketch(asked) => sketch::view(asked, block.line, page),
        BlockKind::Ledger(asked) => ledger::view(asked, block.line, page),
        BlockKind::Faded(faded) => faded::view(faded, block.line, page),
        BlockKind::Measure(measure) => measure::view(measure, block.line, page),
        BlockKind::Deeper(deeper) => {
            deeper::view(plain(&deeper.title), &deeper.blocks, block.line, page)
        }
        BlockKind::Answers(inner) => {
            deeper::view("The answers".to_owned(), inner, block.line, page)
        }
        BlockKind::Teacher(inner) => teacher(inner, page),
        BlockKind::SideBySide(table) => side_by_side::view(table, block.line, page),
        BlockKind::Target(target) => target::view(target, block.line, page),
        BlockKind::Levers(levers) => levers::view(levers, block.line, page),
        BlockKind::HundredGrams(grams) => hundred_grams::view(grams, block.line, page),
        BlockKind::Run(asked) => run::view(asked, block.line, page),
        BlockKind::Broken { name, source, problems } => broken(name, source, problems),
    }
}

/// Running text, made anew when its words or the numbers in it change.
fn paragraph<'a>(spans: &'a [Span], page: Page<'a>) -> Element<'a, Message> {
    kept((spans, told(spans, page)), move || flow(spans, size::BODY, page))
}

/// The live numbers among spans, as they are shown.
fn told<'a>(spans: impl IntoIterator<Item = &'a Span>, page: Page<'_>) -> Vec<String> {
    let spans = spans.into_iter();
    let live = spans.filter(|span| matches!(span, Span::Link { to: Target::Live { .. }, .. }));
    live.map(|span| spoken(std::slice::from_ref(span), page.desk, page.settings)).collect()
}

/// A note for the teacher, seen before a class alone.
fn teacher<'a>(inner: &'a [Block], page: Page<'a>) -> Element<'a, Message> {
    let title = text("For the teacher").size(size::LABEL).font(SEMIBOLD).style(theme::accent);
    container(column![title, blocks(inner, page)].spacing(UNIT))
        .style(theme::note)
        .padding(2.0 * UNIT)
        .width(Fill)
        .into()
}

/// A footnote where it stands, with the way back to the place that refers to it.
fn footnote<'a>(name: &'a str, inner: &'a [Block], page: Page<'a>) -> Element<'a, Message> {
    let back = Message::Footnote { name: name.to_owned(), back: true };
    row![
        pressable(Kind::Word, text(format!("{name}.")).size(size::SMALL)).on_press(back),
        blocks(inner, page),
    ]
    .spacing(UNIT)
    .into()
}

/// The name the mark of a footnote is found by.
pub fn footnote_id(name: &str) -> String {
    format!("footnote:{name}")
}

fn heading<'a>(level: u8, anchor: &str, words: &str) -> Element<'a, Message> {
    let (size, font, above) = match level {
        1 => (size::TITLE, BOLD, UNIT),
        2 => (size::HEADING, BOLD, 3.0 * UNIT),
        _ => (size::MINOR, SEMIBOLD, UNIT),
    };
    container(text(words.to_owned()).size(size).font(font).line_height(1.25).width(Fill))
        .id(heading_id(anchor))
        .padding(Padding::ZERO.top(above))
        .into()
}

fn list<'a>(start: Option<u64>, items: &'a [Vec<Block>], page: Page<'a>) -> Element<'a, Message> {
    let mut stack = column![].spacing(UNIT).width(Fill);
    for (place, item) in items.iter().enumerate() {
        let mark = start.map_or_else(
            || "•".to_owned(),
            |first| format!("{}.", first.saturating_add(place as u64)),
        );
        stack = stack.push(
            row![
                text(mark).size(size::BODY).line_height(LEADING).width(Length::Fixed(3.0 * UNIT)),
                blocks(item, page),
            ]
            .spacing(UNIT / 2.0),
        );
    }
    container(stack).padding(Padding::ZERO.left(UNIT)).into()
}

fn alert<'a>(kind: AlertKind, inner: &'a [Block], page: Page<'a>) -> Element<'a, Message> {
    let (word, urgent) = match kind {
        AlertKind::Caution => ("Caution", true),
        AlertKind::Warning => ("Warning", true),
        AlertKind::Important => ("Important", false),
        AlertKind::Tip => ("Try this", false),
        AlertKind::Note => ("Note", false),
    };
    let title = text(word).size(size::LABEL).font(SEMIBOLD).style(if urgent {
        theme::warning
    } else {
        theme::accent
    });
    container(column![title, blocks(inner, page)].spacing(UNIT))
        .style(if urgent { theme::caution } else { theme::note })
        .padding(2.0 * UNIT)
        .width(Fill)
        .into()
}

fn figure<'a>(file: &str, alt: &'a str, page: Page<'a>) -> Element<'a, Message> {
    let shown = match page.marks.pictures.get(file) {
        Some(found) => picture::show(found, page.dark),
        None => text(format!("The picture {file} is not in the lesson’s folder.")).into(),
    };
    column![shown, text(alt).size(size::SMALL).style(theme::soft).width(Fill)]
        .spacing(UNIT)
        .width(Fill)
        .into()
}

fn broken<'a>(
    name: &str,
    source: &'a str,
    problems: &'a [crate::lesson::Problem],
) -> Element<'a, Message> {
    let mut stack = column![
        text(format!("This {name} cannot be read"))
            .size(size::LABEL)
            .font(SEMIBOLD)
            .style(theme::warning),
    ]
    .spacing(UNIT);
    for problem in problems {
        stack = stack.push(text(problem.to_string()).size(size::LABEL).width(Fill));
    }
    stack = stack.push(text(source).size(size::SMALL).style(theme::soft).width(Fill));
    container(stack).style(theme::caution).padding(2.0 * UNIT).width(Fill).into()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::app::desk::Desk;
    use crate::app::page::Marks;
    use crate::app::settings::Settings;
    use crate::sheet::{History, Sheet};

    #[test]
    fn notes_for_teachers_are_shown_to_teachers_alone() {
        let source = "```teacher\nAsk for **reasons** first.\n```\n\n## Mud\n";
        let lesson = crate::lesson::parse(source, "lesson.md");
        let desk = Desk::new(History::opened(Sheet::blank()), None, None);
        let (settings, marks) = (Settings::default(), Marks::default());
        for (audience, shown) in
            [(Audience::Reader, false), (Audience::Class { notes: true }, true)]
        {
            let page = Page {
                desk: &desk,
                settings: &settings,
                lesson: &lesson,
                marks: &marks,
                dark: false,
                width: 600.0,
                audience,
            };
            let mut ui = iced_test::simulator(blocks(&lesson.blocks, page));
            assert!(ui.find("Mud").is_ok());
            assert_eq!(ui.find("For the teacher").is_ok(), shown, "{audience:?}");
        }
    }
}
