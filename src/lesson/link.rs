//! Where links lead, and what a picture's file may be called.

use super::document::Target;
use super::front::is_plain_name;
use super::known::{self, Wanted};
use super::place::Fault;

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
        "http" | "https" | "mailto" => Ok(Target::Web(destination.to_owned())),
        _ => {
            let fault = Fault::new(
                format!("a link to \"{destination}\" leads nowhere"),
                "live:quantity-id, quantity:quantity-id, lesson:lesson-id, #heading or https://...",
            );
            let schemes = ["live", "quantity", "lesson", "https"];
            let nearest = crate::quantity::catalogue::nearest_of(scheme, schemes);
            Err(fault.nearest(nearest.map(|near| format!("{near}:{rest}")).as_deref()))
        }
    }
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
