//! What a target comes to, in sentences.

use super::{Bar, Target};
use crate::quantity::{AnyId, Units, catalogue};
use crate::study::words::label;

impl Target {
    /// The answers in words, or the nearest reached and what keeps it from going further.
    pub fn sentence(&self, units: &Units) -> String {
        let (make, by) = (label(self.wish.make), label(self.wish.by));
        let show = |id: AnyId, si: f64| {
            catalogue::find(id.name())
                .map_or_else(String::new, |entry| units.show(entry, si).to_string())
        };
        let (wish, x) = (show(self.wish.make, self.wish.be), |si| show(self.wish.by, si));
        match (self.answers.as_slice(), &self.nearest) {
            ([one], _) => format!("At {} {by} the {make} is {wish}.", x(*one)),
            ([one, two], _) => {
                format!("Two answers: at {} and at {} {by} the {make} is {wish}.", x(*one), x(*two))
            }
            ([first @ .., last], _) => {
                let first: Vec<String> = first.iter().map(|si| x(*si)).collect();
                format!(
                    "{} answers: at {} and {} {by} the {make} is {wish}.",
                    first.len() + 1,
                    first.join(", "),
                    x(*last)
                )
            }
            ([], Some(nearest)) => {
                let reached = show(self.wish.make, nearest.reached);
                if nearest.bar == Bar::NoEffect {
                    return format!(
                        "No answer: the {by} makes no difference here, and the {make} stays at \
                         {reached}."
                    );
                }
                let at = x(nearest.at);
                format!(
                    "No {by} from {} to {} makes the {make} {wish}. The nearest is {reached}, at \
                     {at}: {}.",
                    x(self.from),
                    x(self.to),
                    nearest.bar.why()
                )
            }
            ([], None) => {
                let why = self.gaps.first().map(String::as_str).unwrap_or_default();
                format!("There is no {make} for any {by} here. {why}").trim_end().to_owned()
            }
        }
    }
}

impl Bar {
    /// What keeps it from going further, without a full stop.
    fn why(&self) -> String {
        match self {
            Self::NoEffect => "nothing changes".to_owned(),
            Self::End => "the range ends there".to_owned(),
            Self::Turns => "there it turns round".to_owned(),
            Self::Whole => "only whole numbers make sense".to_owned(),
            Self::Breaks(why) => {
                let why = why.trim_end_matches('.');
                let mut letters = why.chars();
                let first = letters.next().map(|letter| letter.to_lowercase().to_string());
                format!("beyond it, {}{}", first.unwrap_or_default(), letters.as_str())
            }
        }
    }
}
