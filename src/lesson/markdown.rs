//! From the events of the Markdown parser to blocks.

mod code;
mod definition;
mod footnote;
mod table;

use std::ops::Range;

use pulldown_cmark::{BlockQuoteKind, Event, Parser, Tag, TagEnd};

use super::anchor::Anchors;
use super::document::{AlertKind, Block, BlockKind, Heading};
use super::inline::{self, Inline, OPTIONS, Part, Text};
use super::place::{Fault, Origin, Report};
use super::words;
use code::{Code, CodeKind};
use definition::Definitions;
use footnote::Footnotes;
use table::Table;

/// Quotes and lists nested deeper than this lose their frames, never their words.
const DEEPEST: usize = 64;

/// The blocks and headings of a text.
pub(super) fn read(
    text: &str,
    origin: &Origin,
    lesson: &str,
    report: &mut Report,
) -> (Vec<Block>, Vec<Heading>) {
    read_all(text, origin, Some(lesson), report)
}

/// The blocks of a text inside a live block: it holds neither headings nor live blocks of its own.
pub(super) fn read_inside(text: &str, origin: &Origin, report: &mut Report) -> Vec<Block> {
    read_all(text, origin, None, report).0
}

fn read_all(
    text: &str,
    origin: &Origin,
    lesson: Option<&str>,
    report: &mut Report,
) -> (Vec<Block>, Vec<Heading>) {
    let parser = Parser::new_ext(text, OPTIONS).into_offset_iter();
    let definitions = Definitions::of(text, parser.reference_definitions());
    let mut reader = Reader {
        from: Text { text, origin },
        lesson,
        report,
        definitions,
        frames: Vec::new(),
        root: Frame::new(Container::Root, 0, 0),
        flattened: 0,
        leaf: None,
        code: None,
        table: None,
        anchors: Anchors::default(),
        guesses: Anchors::default(),
        footnotes: Footnotes::default(),
        headings: Vec::new(),
    };
    for (event, at) in parser {
        reader.take(event, at);
    }
    reader.end_leaf();
    reader.gap(text.len());
    reader.footnotes.check(reader.report);
    (reader.root.blocks, reader.headings)
}

enum Container {
    Root,
    Quote(Option<AlertKind>),
    List { start: Option<u64>, items: Vec<Vec<Block>> },
    Item,
    Footnote(String),
}

impl Container {
    /// Whether it is a caution or a warning.
    fn is_urgent(&self) -> bool {
        matches!(self, Self::Quote(Some(AlertKind::Caution | AlertKind::Warning)))
    }
}

struct Frame {
    container: Container,
    line: usize,
    blocks: Vec<Block>,
    /// Everything of the text before this offset is taken.
    taken: usize,
}

impl Frame {
    fn new(container: Container, line: usize, taken: usize) -> Self {
        Self { container, line, blocks: Vec::new(), taken }
    }
}

struct Leaf {
    line: usize,
    heading: Option<u8>,
    inline: Inline,
}

struct Reader<'r, 'a, 's> {
    from: Text<'a>,
    /// The lesson's id; nothing inside a live block.
    lesson: Option<&'a str>,
    report: &'r mut Report<'s>,
    definitions: Definitions,
    frames: Vec<Frame>,
    root: Frame,
    /// Containers open without a frame, because they are too deep.
    flattened: usize,
    leaf: Option<Leaf>,
    code: Option<Code>,
    table: Option<Table>,
    anchors: Anchors,
    guesses: Anchors,
    footnotes: Footnotes,
    headings: Vec<Heading>,
}

impl Reader<'_, '_, '_> {
    fn take(&mut self, event: Event, at: Range<usize>) {
        match event {
            Event::Start(tag) if is_block(&tag) => self.start(tag, at),
            Event::End(tag) if is_block_end(tag) => self.end(tag, at),
            Event::Rule => {
                self.begin(&at);
                self.push(at.start, BlockKind::Rule);
                self.took(at.end);
            }
            Event::Text(text) | Event::Html(text) if self.code.is_some() => self.code(&text, at),
            event => self.inline(event, at),
        }
    }

    fn start(&mut self, tag: Tag, at: Range<usize>) {
        match tag {
            Tag::TableHead | Tag::TableRow => {}
            Tag::TableCell => {
                if let Some(table) = &mut self.table {
                    table.start_cell();
                }
            }
            tag => {
                self.begin(&at);
                self.start_block(tag, at);
            }
        }
    }

    fn start_block(&mut self, tag: Tag, at: Range<usize>) {
        let line = self.line(at.start);
        match tag {
            Tag::Paragraph => {
                self.leaf = Some(Leaf { line, heading: None, inline: Inline::default() })
            }
            Tag::Heading { level, .. } => {
                let heading = Some(level as u8);
                if self.lesson.is_none() {
                    let fault = Fault::new("a heading inside a live block", "a line in bold");
                    self.report.add(self.from.origin.file(at.start), fault);
                }
                self.leaf = Some(Leaf { line, heading, inline: Inline::default() });
            }
            Tag::CodeBlock(kind) => self.start_code(kind, at),
            Tag::HtmlBlock => {
                self.report.add(self.from.origin.file(at.start), inline::html_fault());
                self.open_code(CodeKind::Html, at);
            }
            Tag::Table(columns) => {
                self.table = Some(Table::new(columns, line, at.start));
            }
            Tag::BlockQuote(kind) => self.open(Container::Quote(kind.map(alert)), at),
            Tag::List(start) => self.open(Container::List { start, items: Vec::new() }, at),
            Tag::Item => self.open(Container::Item, at),
            Tag::FootnoteDefinition(name) => {
                let label = self.from.text.get(at.clone()).and_then(|t| t.find("]:")).unwrap_or(0);
                self.footnotes.stands(&name, self.from.origin.file(at.start));
                self.open(Container::Footnote(name.to_string()), at.start + label + 2..at.end);
            }
            _ => {}
        }
    }

    fn end(&mut self, tag: TagEnd, at: Range<usize>) {
        match tag {
            TagEnd::Paragraph | TagEnd::Heading(_) => self.end_leaf(),
            TagEnd::CodeBlock | TagEnd::HtmlBlock => self.end_code(),
            TagEnd::TableCell => {
                if let Some(table) = &mut self.table {
                    table.end_cell(at.end);
                }
            }
            TagEnd::TableHead | TagEnd::TableRow => self.end_row(&at),
            TagEnd::Table => self.end_table(),
            _ => self.close(at.end),
        }
        if !matches!(tag, TagEnd::TableCell | TagEnd::TableHead | TagEnd::TableRow) {
            self.took(at.end);
        }
    }

    fn inline(&mut self, event: Event, at: Range<usize>) {
        if let Event::FootnoteReference(name) = &event {
            self.footnotes.mark(name);
        }
        if let Some(cell) = self.table.as_mut().and_then(Table::cell) {
            cell.take(event, at, self.from, self.report);
            return;
        }
        if self.leaf.is_none() {
            // The text of a tight list item stands in no paragraph.
            self.gap(at.start);
            let line = self.line(at.start);
            self.leaf = Some(Leaf { line, heading: None, inline: Inline::default() });
        }
        let end = at.end;
        if let Some(leaf) = &mut self.leaf {
            leaf.inline.take(event, at, self.from, self.report);
        }
        self.took(end);
    }

    fn begin(&mut self, at: &Range<usize>) {
        self.end_leaf();
        self.gap(at.start);
    }

    fn end_leaf(&mut self) {
        let Some(Leaf { line, heading, mut inline }) = self.leaf.take() else { return };
        let prose = inline.take_prose(self.report);
        let Some(level) = heading else {
            let urgent = self.frames.iter().any(|frame| frame.container.is_urgent());
            self.report.prose(prose, urgent);
            for part in inline.into_parts() {
                let kind = match part {
                    Part::Spans(spans) => BlockKind::Paragraph(spans),
                    Part::Formula(tex) => BlockKind::Formula(tex),
                    Part::Picture { file, alt } => BlockKind::Picture { file, alt },
                };
                self.top().blocks.push(Block { line, kind });
            }
            return;
        };
        let spans = inline.into_spans();
        let title = words::of_spans(&spans);
        let anchor = self.anchors.name(&title);
        self.headings.push(Heading { level, anchor: anchor.clone(), title, line });
        self.top().blocks.push(Block { line, kind: BlockKind::Heading { level, anchor, spans } });
    }

    fn end_row(&mut self, at: &Range<usize>) {
        if let Some(table) = &mut self.table {
            table.end_row(at, self.from, self.report);
        }
    }

    fn end_table(&mut self) {
        if let Some(table) = self.table.take() {
            self.top().blocks.push(table.into_block());
        }
    }

    fn open(&mut self, container: Container, at: Range<usize>) {
        let fits = match container {
            Container::Item => self.flattened == 0,
            _ => self.flattened == 0 && self.frames.len() < DEEPEST,
        };
        if fits {
            let line = self.line(at.start);
            self.frames.push(Frame::new(container, line, at.start));
        } else {
            self.flattened += 1;
        }
    }

    fn close(&mut self, end: usize) {
        self.end_leaf();
        self.gap(end);
        if self.flattened > 0 {
            self.flattened -= 1;
            return;
        }
        let Some(Frame { container, line, blocks, .. }) = self.frames.pop() else { return };
        let kind = match container {
            Container::Root => return,
            Container::Quote(None) => BlockKind::Quote(blocks),
            Container::Quote(Some(kind)) => BlockKind::Alert { kind, blocks },
            Container::List { start, items } => {
                // What stood between the items follows the list.
                let list = Block { line, kind: BlockKind::List { start, items } };
                self.top().blocks.extend(std::iter::once(list).chain(blocks));
                return;
            }
            Container::Footnote(name) => BlockKind::Footnote { name, blocks },
            Container::Item => {
                if let Container::List { items, .. } = &mut self.top().container {
                    items.push(blocks);
                }
                return;
            }
        };
        self.top().blocks.push(Block { line, kind });
    }

    /// Text between two blocks holds marks and link definitions; a definition that no link uses
    /// would be lost, so it is shown.
    fn gap(&mut self, until: usize) {
        let from = std::mem::replace(&mut self.top().taken, until);
        let Some((at, words)) = self.definitions.unused(self.from.text, from..until) else {
            return;
        };
        let fault = Fault::new("no link uses this definition", "a link that names it");
        self.report.add(self.from.origin.file(at), fault);
        self.push(at, BlockKind::Paragraph(vec![inline::plain(words)]));
    }

    /// Everything before `end` is taken.
    fn took(&mut self, end: usize) {
        let top = self.top();
        top.taken = top.taken.max(end);
    }

    fn push(&mut self, at: usize, kind: BlockKind) {
        let line = self.line(at);
        self.top().blocks.push(Block { line, kind });
    }

    fn top(&mut self) -> &mut Frame {
        self.frames.last_mut().unwrap_or(&mut self.root)
    }

    fn line(&self, at: usize) -> usize {
        self.report.line(self.from.origin.file(at))
    }
}

fn is_block(tag: &Tag) -> bool {
    is_block_end(tag.to_end())
}

fn is_block_end(tag: TagEnd) -> bool {
    !matches!(
        tag,
        TagEnd::Emphasis
            | TagEnd::Strong
            | TagEnd::Strikethrough
            | TagEnd::Superscript
            | TagEnd::Subscript
            | TagEnd::Link
            | TagEnd::Image
    )
}

fn alert(kind: BlockQuoteKind) -> AlertKind {
    match kind {
        BlockQuoteKind::Note => AlertKind::Note,
        BlockQuoteKind::Tip => AlertKind::Tip,
        BlockQuoteKind::Important => AlertKind::Important,
        BlockQuoteKind::Warning => AlertKind::Warning,
        BlockQuoteKind::Caution => AlertKind::Caution,
    }
}
