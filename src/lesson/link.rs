//! Where links lead, and what a picture's file may be called.

use super::claim::Says;
use super::document::Target;
use super::front::is_plain_name;
use super::known::{self, Wanted};
use super::place::Fault;
use super::printed::{self, ABOUT};
use crate::quantity::{self, catalogue};

/// How far a number of three figures may be off, as a share.
const EXACT: f64 = 0.006;

/// The target of a link.
pub(super) fn target(destination: &str) -> Result<Target, Fault> {
    if let Some(anchor) = destination.strip_prefix('#') {
        return Ok(Target::Heading(anchor.to_owned()));
    }
    let (scheme, rest) = destination.split_once(':').unwrap_or(("", destination));
    match scheme {
        "live" => live(rest),
        "quantity" => Ok(Target::Quantity(known::entry(rest, Wanted::Any)?.id)),
        "lesson" if is_plain_name(rest) => Ok(Target::Lesson(rest.to_owned())),
        "lesson" => Err(Fault::new(format!("\"{rest}\" is no lesson"), "the id of a lesson")),
        "http" | "https" if is_web(rest) => Ok(Target::Web(destination.to_owned())),
        "mailto" if is_mail(rest) => Ok(Target::Web(destination.to_owned())),
        "http" | "https" | "mailto" => Err(Fault::new(
            format!("\"{destination}\" is no address"),
            "https://example.org/page or mailto:name@example.org",
        )),
        _ => {
            let fault = Fault::new(
                format!("a link to \"{destination}\" leads nowhere"),
                "live:quantity-id, quantity:quantity-id, lesson:lesson-id, #heading or https://...",
            );
            let schemes = ["live", "quantity", "lesson", "https"];
            let nearest = catalogue::nearest_of(scheme, schemes);
            Err(fault.nearest(nearest.map(|near| format!("{near}:{rest}")).as_deref()))
        }
    }
}

/// Whether what follows `https:` can be an address on the web (RFC 3986): two strokes, a host, and
/// maybe a port and a path, without spaces. It is never asked for.
fn is_web(rest: &str) -> bool {
    let Some(rest) = rest.strip_prefix("//") else { return false };
    let (authority, path) = rest.split_at(rest.find(['/', '?', '#']).unwrap_or(rest.len()));
    let (host, port) = authority.split_once(':').unwrap_or((authority, "443"));
    let unsafe_in_path = |c: char| c.is_whitespace() || c.is_control() || "<>\"\\^`{|}".contains(c);
    is_host(host) && port.parse::<u16>().is_ok() && !path.contains(unsafe_in_path)
}

/// Names parted by dots, each of letters, digits and inner hyphens, or a number of four bytes.
fn is_host(host: &str) -> bool {
    let is_name = |name: &str| {
        !name.is_empty()
            && !name.starts_with('-')
            && !name.ends_with('-')
            && name.chars().all(|c| c.is_alphanumeric() || c == '-')
    };
    host.contains('.') && host.split('.').all(is_name)
}

fn is_mail(rest: &str) -> bool {
    let address = rest.split('?').next().unwrap_or_default();
    address.split_once('@').is_some_and(|(name, host)| {
        !name.is_empty() && !name.contains(char::is_whitespace) && is_host(host)
    })
}

/// What the words of a live link say its number is, if they are a number.
pub(super) fn words_of(to: &Target, words: &str) -> Option<Says> {
    let Target::Live { id, .. } = to else { return None };
    let entry = catalogue::find(id.name())?;
    let (number, about) = printed::about(words);
    let si = quantity::parse(number, entry).ok()?.si;
    Some(Says::Words { quantity: *id, si, near: if about { ABOUT } else { EXACT } })
}

fn live(rest: &str) -> Result<Target, Fault> {
    let (name, query) = match rest.split_once('?') {
        Some((name, query)) => (name, Some(query)),
        None => (rest, None),
    };
    let entry = known::entry(name, Wanted::Any)?;
    let unit = match query.map(|query| query.split_once('=')) {
        None => None,
        Some(Some(("in", symbol))) => Some(known::unit(symbol, entry)?),
        Some(_) => {
            let query = query.unwrap_or_default();
            let fault = Fault::new(format!("\"?{query}\" says nothing"), "?in= and a unit");
            return Err(fault);
        }
    };
    Ok(Target::Live { id: entry.id, unit })
}

/// Whether a picture's file lies in the lesson's own folder and is of a kind we can draw.
pub(super) fn picture(file: &str) -> Result<(), Fault> {
    let outside = file.contains(['/', '\\', ':']) || file.starts_with('.');
    if outside {
        return Err(Fault::new(
            format!("\"{file}\" is not in the lesson's folder"),
            "the plain name of a file beside lesson.md",
        ));
    }
    let kind = file.rsplit_once('.').map(|(_, kind)| kind.to_ascii_lowercase());
    match kind.as_deref() {
        Some("svg" | "png" | "jpg" | "jpeg") => Ok(()),
        _ => Err(Fault::new(format!("\"{file}\" is no picture"), "a file .svg, .png or .jpg")),
    }
}
