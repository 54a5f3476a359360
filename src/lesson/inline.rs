//! Text within a block: words, formulas and links.

use std::ops::Range;

use pulldown_cmark::{Event, Options, Parser, Tag, TagEnd};

use super::document::{MentionKind, Span, Style, Target};
use super::link;
use super::place::{Fault, Origin, Report};
use super::prose::Prose;
use super::words;

/// What a lesson may use beyond CommonMark.
pub(super) const OPTIONS: Options = Options::ENABLE_TABLES
    .union(Options::ENABLE_FOOTNOTES)
    .union(Options::ENABLE_STRIKETHROUGH)
    .union(Options::ENABLE_MATH)
    .union(Options::ENABLE_GFM);

/// A text and where it came from.
#[derive(Clone, Copy)]
pub(super) struct Text<'a> {
    pub(super) text: &'a str,
    pub(super) origin: &'a Origin,
}

/// Running text, cut where a picture or a formula stands on its own.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Part {
    Spans(Vec<Span>),
    Formula(String),
    Picture { file: String, alt: String },
}

/// Collects the spans of one block.
#[derive(Default)]
pub(super) struct Inline {
    parts: Vec<Part>,
    spans: Vec<Span>,
    strong: usize,
    emphasis: usize,
    strikethrough: usize,
    link: Option<Link>,
    picture: Option<Picture>,
    prose: Prose,
}

struct Link {
    to: Target,
    at: usize,
    title: String,
    spans: Vec<Span>,
}

struct Picture {
    at: usize,
    file: String,
    title: String,
    alt: String,
    /// Pictures and links inside its words, which count as words alone.
    inside: usize,
}

impl Inline {
    /// Takes the next event of the block.
    pub(super) fn take(&mut self, event: Event, at: Range<usize>, from: Text, report: &mut Report) {
        if let Some(picture) = &mut self.picture {
            if !picture.take(&event) {
                self.end_picture(report);
            }
            return;
        }
        if report.proofs() {
            self.read_aloud(&event, from.origin.file(at.start));
        }
        match event {
            Event::Text(text) => self.text(&text, false),
            Event::Code(text) => self.text(&text, true),
            Event::InlineHtml(html) | Event::Html(html) => {
                report.add(from.origin.file(at.start), html_fault());
                self.text(&html, false);
            }
            Event::InlineMath(tex) => self.push(Span::Formula(tex.to_string())),
            Event::DisplayMath(tex) => self.formula(tex.to_string()),
            Event::FootnoteReference(name) => self.push(Span::FootnoteRef(name.to_string())),
            Event::SoftBreak => self.text(" ", false),
            Event::HardBreak => self.push(Span::Break),
            Event::Start(tag) => self.start(tag, at, from, report),
            Event::End(tag) => self.end(tag, report),
            Event::Rule | Event::TaskListMarker(_) => {}
        }
    }

    /// Takes down what is read as words.
    fn read_aloud(&mut self, event: &Event, at: usize) {
        match event {
            Event::Text(text) => self.prose.push(at, text),
            Event::SoftBreak | Event::HardBreak => self.prose.push(at, " "),
            Event::Code(_) | Event::InlineMath(_) | Event::DisplayMath(_) => {
                self.prose.pass_over(at);
            }
            _ => {}
        }
    }

    /// What is read as words; notes marks in it that lead to no footnote.
    pub(super) fn take_prose(&mut self, report: &mut Report) -> Prose {
        let prose = std::mem::take(&mut self.prose);
        for (at, name) in prose.loose_marks() {
            let fault = Fault::new(
                format!("no footnote \"{name}\" stands here"),
                format!("a paragraph that starts with [^{name}]: in the lesson's own text"),
            );
            report.flaw(at, fault);
        }
        prose
    }

    /// The text, cut where a picture or a formula stands on its own.
    pub(super) fn into_parts(mut self) -> Vec<Part> {
        self.cut();
        self.parts
    }

    /// The text in one piece: formulas stay within the line, pictures become their words.
    pub(super) fn into_spans(mut self) -> Vec<Span> {
        self.cut();
        if let [Part::Spans(spans)] = &mut self.parts[..] {
            return std::mem::take(spans);
        }
        let mut spans = Vec::new();
        for part in self.parts {
            match part {
                Part::Spans(part) => part.into_iter().for_each(|span| merge(&mut spans, span)),
                Part::Formula(tex) => spans.push(Span::Formula(tex)),
                Part::Picture { alt, .. } => merge(&mut spans, plain(alt)),
            }
        }
        spans
    }

    fn start(&mut self, tag: Tag, at: Range<usize>, from: Text, report: &mut Report) {
        match tag {
            Tag::Strong => self.strong += 1,
            Tag::Emphasis => self.emphasis += 1,
            Tag::Strikethrough => self.strikethrough += 1,
            Tag::Link { dest_url, title, .. } => {
                let place = place_of(&dest_url, at.clone(), from);
                let to = link::target(&dest_url).unwrap_or_else(|fault| {
                    report.add(place, fault);
                    Target::Unknown(dest_url.to_string())
                });
                match &to {
                    Target::Live { id, .. } | Target::Quantity(id) => {
                        report.mention(place, MentionKind::Quantity, id.name());
                    }
                    Target::Lesson(id) => report.mention(place, MentionKind::Lesson, id),
                    Target::Heading(anchor) => report.mention(place, MentionKind::Heading, anchor),
                    _ => {}
                }
                self.end_link();
                self.link =
                    Some(Link { to, at: place, title: title.to_string(), spans: Vec::new() });
            }
            Tag::Image { dest_url, title, .. } => {
                let place = place_of(&dest_url, at.clone(), from);
                match link::picture(&dest_url) {
                    Ok(()) => report.mention(place, MentionKind::Picture, &dest_url),
                    Err(fault) => report.add(place, fault),
                }
                self.picture = Some(Picture {
                    at: from.origin.file(at.start),
                    file: dest_url.to_string(),
                    title: title.to_string(),
                    alt: String::new(),
                    inside: 0,
                });
            }
            _ => {}
        }
    }

    fn end(&mut self, tag: TagEnd, report: &mut Report) {
        match tag {
            TagEnd::Strong => self.strong = self.strong.saturating_sub(1),
            TagEnd::Emphasis => self.emphasis = self.emphasis.saturating_sub(1),
            TagEnd::Strikethrough => self.strikethrough = self.strikethrough.saturating_sub(1),
            TagEnd::Link => {
                if let Some(link) = &self.link
                    && let Some(says) = link::words_of(&link.to, &words::of_spans(&link.spans))
                {
                    report.claim(link.at, says);
                }
                self.end_link();
            }
            _ => {}
        }
    }

    fn end_link(&mut self) {
        if let Some(Link { to, title, mut spans, .. }) = self.link.take() {
            if !title.is_empty() {
                merge(&mut spans, plain(format!(" ({title})")));
            }
            self.push(Span::Link { to, spans });
        }
    }

    fn end_picture(&mut self, report: &mut Report) {
        let Some(Picture { at, file, title, mut alt, .. }) = self.picture.take() else { return };
        if alt.trim().is_empty() {
            let fault = Fault::new(
                "the picture has no words for a reader who cannot see it",
                "what it shows, between the square brackets",
            );
            report.add(at, fault);
        }
        if !title.is_empty() {
            alt = format!("{alt} ({title})");
        }
        // A picture within a link, or one we will not open, is its words.
        if self.link.is_some() || link::picture(&file).is_err() {
            self.push(plain(alt));
        } else {
            self.cut();
            self.parts.push(Part::Picture { file, alt });
        }
    }

    fn formula(&mut self, tex: String) {
        if self.link.is_some() {
            self.push(Span::Formula(tex));
        } else {
            self.cut();
            self.parts.push(Part::Formula(tex));
        }
    }

    fn text(&mut self, text: &str, code: bool) {
        let style = Style {
            strong: self.strong > 0,
            emphasis: self.emphasis > 0,
            strikethrough: self.strikethrough > 0,
            code,
        };
        let spans = self.open();
        match spans.last_mut() {
            Some(Span::Text { text: before, style: same }) if *same == style => {
                before.push_str(text);
            }
            _ if text.is_empty() => {}
            _ => spans.push(Span::Text { text: text.to_owned(), style }),
        }
    }

    fn push(&mut self, span: Span) {
        merge(self.open(), span);
    }

    /// The spans that the next one joins.
    fn open(&mut self) -> &mut Vec<Span> {
        self.link.as_mut().map_or(&mut self.spans, |link| &mut link.spans)
    }

    fn cut(&mut self) {
        self.end_link();
        let spans = std::mem::take(&mut self.spans);
        if words::any_in(&spans) {
            self.parts.push(Part::Spans(spans));
        }
    }
}

impl Picture {
    /// Takes an event of its words; false at its end.
    fn take(&mut self, event: &Event) -> bool {
        match event {
            Event::Text(text)
            | Event::Code(text)
            | Event::InlineHtml(text)
            | Event::Html(text)
            | Event::InlineMath(text)
            | Event::DisplayMath(text)
            | Event::FootnoteReference(text) => self.alt.push_str(text),
            Event::SoftBreak | Event::HardBreak => self.alt.push(' '),
            Event::Start(Tag::Image { .. }) => self.inside += 1,
            Event::End(TagEnd::Image) if self.inside == 0 => return false,
            Event::End(TagEnd::Image) => self.inside -= 1,
            _ => {}
        }
        true
    }
}

/// Reads a text of a live block as Markdown that stays within a line.
pub(super) fn read(text: &str, origin: &Origin, report: &mut Report) -> Vec<Span> {
    let mut inline = Inline::default();
    let mut gap = false;
    for (event, at) in Parser::new_ext(text, OPTIONS).into_offset_iter() {
        match &event {
            Event::End(TagEnd::Paragraph | TagEnd::Item | TagEnd::Heading(_)) => gap = true,
            Event::Start(_) => {}
            _ if gap => {
                inline.push(Span::Break);
                gap = false;
            }
            _ => {}
        }
        inline.take(event, at, Text { text, origin }, report);
    }
    let prose = inline.take_prose(report);
    report.prose(prose, false);
    let spans = inline.into_spans();
    if spans.is_empty() && !text.trim().is_empty() {
        return vec![plain(text.to_owned())];
    }
    spans
}

/// Words without style.
pub(super) fn plain(text: String) -> Span {
    Span::Text { text, style: Style::default() }
}

/// What is said about HTML.
pub(super) fn html_fault() -> Fault {
    Fault::new("HTML is shown as text, not followed", "Markdown alone")
}

fn merge(spans: &mut Vec<Span>, span: Span) {
    if let (Some(Span::Text { text, style }), Span::Text { text: more, style: same }) =
        (spans.last_mut(), &span)
        && style == same
    {
        text.push_str(more);
        return;
    }
    if !matches!(&span, Span::Text { text, .. } if text.is_empty()) {
        spans.push(span);
    }
}

/// Where a link's destination stands in the file.
fn place_of(destination: &str, link: Range<usize>, from: Text) -> usize {
    let found = from.text.get(link.clone()).and_then(|written| written.rfind(destination));
    from.origin.file(link.start + found.unwrap_or(0))
}
