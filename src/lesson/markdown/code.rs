//! Code blocks, live blocks and pieces of HTML.

use std::ops::Range;

use pulldown_cmark::CodeBlockKind;

use super::Reader;
use crate::lesson::block;
use crate::lesson::document::{Block, BlockKind};
use crate::lesson::place::{Fault, Origin};
use crate::lesson::words;

/// Code being read.
pub(super) struct Code {
    line: usize,
    at: usize,
    kind: CodeKind,
    text: String,
    origin: Origin,
}

/// What it is.
pub(super) enum CodeKind {
    Plain(String),
    Live(String),
    Html,
}

impl Reader<'_, '_, '_> {
    pub(super) fn start_code(&mut self, kind: CodeBlockKind, at: Range<usize>) {
        let kind = match kind {
            CodeBlockKind::Fenced(info) if block::is_meant(&info) => {
                if self.lesson.is_some() {
                    CodeKind::Live(info.to_string())
                } else {
                    let fault = Fault::new("a live block inside another", "each on its own");
                    self.report.add(self.from.origin.file(at.start), fault);
                    CodeKind::Plain(info.to_string())
                }
            }
            CodeBlockKind::Fenced(info) => CodeKind::Plain(info.to_string()),
            CodeBlockKind::Indented => CodeKind::Plain(String::new()),
        };
        self.open_code(kind, at);
    }

    pub(super) fn open_code(&mut self, kind: CodeKind, at: Range<usize>) {
        let origin = Origin::default();
        let line = self.line(at.start);
        self.code = Some(Code { line, at: at.start, kind, text: String::new(), origin });
    }

    pub(super) fn code(&mut self, text: &str, at: Range<usize>) {
        if let Some(code) = &mut self.code {
            code.origin.push(code.text.len(), self.from.origin.file(at.start));
            code.text.push_str(text);
        }
    }

    pub(super) fn end_code(&mut self) {
        let Some(Code { line, at, kind, text, origin }) = self.code.take() else { return };
        let kind = match kind {
            CodeKind::Plain(language) => BlockKind::Code { language, text },
            CodeKind::Html => BlockKind::Code { language: "html".to_owned(), text },
            CodeKind::Live(name) => {
                let at = self.from.origin.file(at);
                let Some(mut kind) = block::read(&name, text, &origin, at, self.report) else {
                    return;
                };
                if let BlockKind::Guess(guess) = &mut kind {
                    let name = self.guesses.name(&words::of_spans(&guess.question));
                    guess.key = format!("{}/{name}", self.lesson.unwrap_or_default());
                }
                kind
            }
        };
        self.top().blocks.push(Block { line, kind });
    }
}
