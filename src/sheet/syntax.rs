//! Words for a text that is no TOML: where, what was expected, how to mend it.

use toml_edit::TomlError;

use super::report::{Position, SyntaxError};

/// What to say of a text that cannot be parsed.
pub(super) fn explain(body: &str, error: &TomlError) -> SyntaxError {
    let byte = error.span().map_or(0, |span| span.start);
    let position = Position::of(body, byte);
    let line = body.lines().nth(position.line - 1).unwrap_or_default();
    SyntaxError {
        position,
        message: format!("This line cannot be read ({}).", error.message().trim_end_matches('.')),
        mend: mend(line.trim(), error.message()),
    }
}

/// How to mend a line, by the slips that happen most.
fn mend(line: &str, message: &str) -> String {
    if message.contains("duplicate") {
        return "A name or heading may stand once: keep one and take the other out.".to_owned();
    }
    if line.contains(['“', '”', '„', '‘', '’']) {
        return "Use straight quotes: \" instead of curly ones.".to_owned();
    }
    if line.starts_with('[') {
        return "A heading stands alone on its line in closed brackets: [machine], or [[parts]] \
                above each part."
            .to_owned();
    }
    let Some((key, value)) = line.split_once('=') else {
        return "Write a number as name = \"value\", a heading as [machine], or start the line \
                with # to make it a comment."
            .to_owned();
    };
    let (key, value) = (key.trim(), value.trim());
    if value.starts_with('[') {
        return "A list stands in brackets, its items in quotes with commas between: \
                at = [\"60 mm\", \"0 mm\", \"55 mm\"]."
            .to_owned();
    }
    if value.matches('"').count() < 2 {
        let bare = value.replace('"', "");
        return format!("Put the value between straight quotes: {key} = \"{}\".", bare.trim());
    }
    "Compare it with a line that works: mass = \"6.4 kg\". A backslash or a quote inside the \
     value needs a backslash before it."
        .to_owned()
}
