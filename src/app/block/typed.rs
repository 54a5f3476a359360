//! A number typed as an answer or a reading: it goes nowhere until the reader commits it.

use iced::widget::{TextInput, text_input};

use crate::app::page::Message;
use crate::app::theme::{self, REGULAR, size};
use crate::quantity::{self, AnyId, Unit, catalogue};

/// The number of a text, SI; one without a unit is in the unit of the field.
///
/// # Errors
/// Why it is no number of the quantity, in words.
pub fn read(text: &str, id: AnyId, unit: &'static Unit) -> Result<f64, String> {
    let Some(entry) = catalogue::find(id.name()) else {
        return Err(format!("There is no quantity {id}."));
    };
    quantity::parse(text, entry)
        .or_else(|words| quantity::parse_in(text, entry, unit).map_err(|_| words))
        .map(|amount| amount.si)
        .map_err(|words| words.to_string())
}

/// The field such a number is typed in.
pub fn field<'a>(id: String, typed: &str, wrong: bool, unit: &Unit) -> TextInput<'a, Message> {
    let unit = unit.symbol;
    let asks = if unit.is_empty() { "a number".to_owned() } else { format!("in {unit}") };
    text_input(&asks, typed)
        .id(id)
        .font(REGULAR)
        .size(size::LABEL)
        .padding([6, 8])
        .style(if wrong { theme::field_wrong } else { theme::field })
}
