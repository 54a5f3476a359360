//! The paths that a Rust source names, `use` trees taken apart, comments and texts left out.

/// A path as the source means it, from the crate's root when it leads inside the crate.
#[derive(Debug, PartialEq, Eq)]
pub struct FoundPath {
    /// Its names: `crate`, `rules`, `Rule`.
    pub names: Vec<String>,
    /// The line it starts on, from 1.
    pub line: usize,
}

struct Token {
    text: String,
    line: usize,
}

/// Every path in `source`, which is the file of the module at `place`.
pub fn paths(source: &str, place: &[&str]) -> Vec<FoundPath> {
    let tokens = tokens(source);
    let text = |at: usize| tokens.get(at).map_or("", |token: &Token| token.text.as_str());
    let mut found = Vec::new();
    // One entry an open brace: whether it opened an inline module, a level more for `super`.
    let mut braces: Vec<bool> = Vec::new();
    let mut at = 0;
    while at < tokens.len() {
        let before = if at == 0 { "" } else { text(at - 1) };
        let starts_use = before == "use" && text(at) != "<";
        let starts_path = is_name(text(at)) && text(at + 1) == "::" && before != "::";
        if starts_use || starts_path {
            let line = tokens[at].line;
            let depth = place.len() + braces.iter().filter(|is_module| **is_module).count();
            let mut trees = Vec::new();
            at = tree(&tokens, at, &[], &mut trees);
            found.extend(
                trees
                    .into_iter()
                    .map(|names| FoundPath { names: rooted(names, place, depth), line }),
            );
            continue;
        }
        match text(at) {
            "{" => braces.push(at >= 2 && text(at - 2) == "mod"),
            "}" => {
                braces.pop();
            }
            _ => {}
        }
        at += 1;
    }
    found
}

/// Reads one `use` tree or plain path from `at`; returns where it ends.
fn tree(tokens: &[Token], at: usize, prefix: &[String], found: &mut Vec<Vec<String>>) -> usize {
    let text = |at: usize| tokens.get(at).map_or("", |token: &Token| token.text.as_str());
    let mut names = prefix.to_vec();
    let mut at = if text(at) == "::" { at + 1 } else { at };
    loop {
        if text(at) == "{" {
            at += 1;
            while at < tokens.len() && text(at) != "}" {
                let start = at;
                at = tree(tokens, at, &names, found);
                while matches!(text(at), "as" | "," | "_") || (text(at - 1) == "as") {
                    at += 1;
                }
                at = at.max(start + 1);
            }
            return at + 1;
        }
        if !is_name(text(at)) && text(at) != "*" {
            break;
        }
        if text(at) != "self" || names.is_empty() {
            names.push(text(at).to_owned());
        }
        at += 1;
        if text(at) != "::" {
            break;
        }
        at += 1;
    }
    found.push(names);
    at
}

/// The path with leading `super`s walked up from `place`, as far as the crate's root.
fn rooted(names: Vec<String>, place: &[&str], depth: usize) -> Vec<String> {
    let ups = names.iter().take_while(|name| *name == "super" || *name == "self").count();
    let supers = names.iter().take(ups).filter(|name| *name == "super").count();
    if supers == 0 {
        return names;
    }
    let left = depth.saturating_sub(supers);
    let up = place.iter().take(left).map(|name| (*name).to_owned());
    std::iter::once("crate".to_owned()).chain(up).chain(names.into_iter().skip(ups)).collect()
}

fn is_name(text: &str) -> bool {
    text.starts_with(|c: char| c.is_alphabetic() || c == '_')
}

/// Names, `::` and single signs; comments, texts, characters and lifetimes are skipped.
fn tokens(source: &str) -> Vec<Token> {
    let mut tokens = Vec::new();
    let mut rest = source;
    let mut line = 1;
    while let Some(first) = rest.chars().next() {
        let (length, kept) = if let Some(length) = skipped(rest) {
            (length, false)
        } else if is_name(rest) {
            let end = rest.find(|c: char| !c.is_alphanumeric() && c != '_');
            (end.unwrap_or(rest.len()), true)
        } else if rest.starts_with("::") {
            (2, true)
        } else {
            (first.len_utf8(), !first.is_whitespace())
        };
        let (text, after) = rest.split_at(length);
        if kept {
            tokens.push(Token { text: text.to_owned(), line });
        }
        line += text.matches('\n').count();
        rest = after;
    }
    tokens
}

/// How many bytes at the start of `rest` are a comment, a text, a character or a lifetime.
fn skipped(rest: &str) -> Option<usize> {
    if rest.starts_with("//") {
        return Some(rest.find('\n').unwrap_or(rest.len()));
    }
    if rest.starts_with("/*") {
        return Some(block_comment(rest));
    }
    let body = rest.trim_start_matches(['b', 'c']);
    let lead = rest.len() - body.len();
    if lead > 1 {
        return None;
    }
    if let Some(raw) = body.strip_prefix('r') {
        let hashes = raw.len() - raw.trim_start_matches('#').len();
        if raw[hashes..].starts_with('"') {
            let close = format!("\"{}", "#".repeat(hashes));
            let start = lead + 1 + hashes + 1;
            return Some(
                rest[start..].find(&close).map_or(rest.len(), |at| start + at + close.len()),
            );
        }
        return None;
    }
    if body.starts_with('"') {
        return Some(lead + quoted(body, '"'));
    }
    let name = body.strip_prefix('\'')?;
    if name.starts_with('\\') || name.chars().nth(1) == Some('\'') {
        return Some(lead + quoted(body, '\''));
    }
    let end = name.find(|c: char| !c.is_alphanumeric() && c != '_');
    Some(lead + 1 + end.unwrap_or(name.len()))
}

fn block_comment(rest: &str) -> usize {
    let mut depth = 0_usize;
    let mut at = 0;
    while at < rest.len() {
        let here = &rest[at..];
        if here.starts_with("/*") {
            depth += 1;
            at += 2;
        } else if here.starts_with("*/") {
            depth -= 1;
            at += 2;
            if depth == 0 {
                return at;
            }
        } else {
            at += here.chars().next().map_or(1, char::len_utf8);
        }
    }
    rest.len()
}

/// The length of a text that opens and closes with `quote`, backslashes heeded.
fn quoted(rest: &str, quote: char) -> usize {
    let mut escaped = false;
    for (at, sign) in rest.char_indices().skip(1) {
        match sign {
            _ if escaped => escaped = false,
            '\\' => escaped = true,
            _ if sign == quote => return at + sign.len_utf8(),
            _ => {}
        }
    }
    rest.len()
}
