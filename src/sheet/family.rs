//! A family: what differs from line to line of a curve, a second quantity or a row of presets.

use super::presets::{self, Row, Table};
use crate::quantity::{self, AnyId, Entry, Units, catalogue};

/// Members at most: more lines than that cannot be told apart.
pub const MOST: usize = 5;

/// The word for every table that says what ground is like.
const GROUND: &str = "ground";
/// The tables that word stands for.
const GROUNDS: [&str; 3] = [GROUND, "terrain", "snow"];

/// What differs from line to line.
#[derive(Debug, Clone, PartialEq)]
pub struct Family {
    /// What its members are members of.
    pub by: By,
    /// Its members in the order named, at most [`MOST`].
    pub members: Vec<Member>,
}

/// What the members of a family are members of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum By {
    /// Values of this quantity.
    Quantity(AnyId),
    /// Rows of a table of presets, called this.
    Presets(&'static str),
}

/// One member: the build with these numbers in place of its own.
#[derive(Debug, Clone, PartialEq)]
pub struct Member {
    /// What a row of presets is called; none for the value of a quantity.
    pub name: Option<String>,
    /// The numbers, in SI units.
    pub numbers: Vec<(AnyId, f64)>,
}

/// Why there is no such family.
#[derive(Debug, Clone, PartialEq)]
pub struct Fault {
    /// The value at fault, counted from zero; none: the name of the family.
    pub value: Option<usize>,
    /// What is wrong.
    pub message: String,
    /// What was expected.
    pub expected: String,
    /// The nearest known name.
    pub nearest: Option<String>,
}

impl Fault {
    fn new(message: impl Into<String>, expected: impl Into<String>) -> Self {
        let (message, expected) = (message.into(), expected.into());
        Self { value: None, message, expected, nearest: None }
    }

    fn near<'a>(mut self, word: &str, known: impl IntoIterator<Item = &'a str>) -> Self {
        self.nearest = catalogue::nearest_of(word, known).map(str::to_owned);
        self
    }

    fn of_value(mut self, place: usize) -> Self {
        self.value = Some(place);
        self
    }
}

impl std::fmt::Display for Fault {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{}; expected {}.", self.message, self.expected)?;
        self.nearest.iter().try_for_each(|near| write!(f, " Did you mean \"{near}\"?"))
    }
}

impl Family {
    /// Reads a family: the id of a quantity that can be set with values, or the name of a table
    /// of presets with names of its rows; `ground` takes rows of any table about ground. Whatever
    /// is not `against` may differ.
    ///
    /// # Errors
    /// Every fault, those of the values after that of the name.
    pub fn read(name: &str, values: &[&str], against: AnyId) -> Result<Self, Vec<Fault>> {
        let by = By::read(name, against).map_err(|fault| vec![fault])?;
        if values.is_empty() {
            let expected = format!("one to {MOST} {}", by.kind());
            return Err(vec![Fault::new("a family without values", expected)]);
        }
        let (mut members, mut faults) = (Vec::new(), Vec::new());
        for (place, value) in values.iter().enumerate() {
            match by.member(value, against) {
                Ok(member) if members.contains(&member) => faults.push(
                    Fault::new(format!("\"{value}\" stands twice"), "each once").of_value(place),
                ),
                Ok(member) => members.push(member),
                Err(fault) => faults.push(fault.of_value(place)),
            }
        }
        if values.len() > MOST {
            let fault = Fault::new(
                format!("{} members", values.len()),
                format!("at most {MOST}, so that the lines can be told apart"),
            );
            faults.push(fault.of_value(MOST));
        }
        if faults.is_empty() { Ok(Self { by, members: told_apart(members) }) } else { Err(faults) }
    }

    /// What the members are members of, in a word or two: "mass", "ground".
    pub fn label(&self) -> &'static str {
        match self.by {
            By::Quantity(id) => catalogue::find(id.name()).map_or(id.name(), |entry| entry.label),
            By::Presets(name) => name,
        }
    }

    /// What a member is called: "4 kg", "dry sand".
    pub fn name(&self, member: &Member, units: &Units) -> String {
        match (&member.name, member.numbers.first()) {
            (Some(name), _) => name.clone(),
            (None, Some((id, si))) => catalogue::find(id.name())
                .map_or_else(String::new, |entry| units.show(entry, *si).short().to_string()),
            (None, None) => String::new(),
        }
    }
}

impl By {
    fn read(name: &str, against: AnyId) -> Result<Self, Fault> {
        if let Some(entry) = catalogue::find(name) {
            return Self::quantity(entry, against);
        }
        if let Some(table) = tables(name).next() {
            return Ok(Self::Presets(table.id));
        }
        let known = catalogue::all().iter().filter(|entry| entry.is_given());
        let known = known.map(|e| e.id.name()).chain(presets::tables().iter().map(|t| t.id));
        let expected = "the id of a quantity that is set, or a table of presets such as ground";
        Err(Fault::new(format!("unknown family \"{name}\""), expected).near(name, known))
    }

    fn quantity(entry: &Entry, against: AnyId) -> Result<Self, Fault> {
        let id = entry.id;
        if !entry.is_given() {
            let message = format!("\"{id}\" is found by a rule");
            return Err(Fault::new(message, "a quantity that the reader sets"));
        }
        if id == against {
            let message = format!("\"{id}\" runs along the foot already");
            return Err(Fault::new(message, "another quantity"));
        }
        Ok(Self::Quantity(id))
    }

    fn kind(self) -> String {
        match self {
            Self::Quantity(id) => format!("values of {id}, each with its unit"),
            Self::Presets(name) => format!("names of rows of the table {name}"),
        }
    }

    fn member(self, text: &str, against: AnyId) -> Result<Member, Fault> {
        match self {
            Self::Quantity(id) => value(id, text),
            Self::Presets(name) => row(name, text, against),
        }
    }
}

fn tables(name: &str) -> impl Iterator<Item = &'static Table> {
    let meant = move |table: &&Table| {
        if name == GROUND { GROUNDS.contains(&table.id) } else { table.id == name }
    };
    presets::tables().iter().filter(meant)
}

fn value(id: AnyId, text: &str) -> Result<Member, Fault> {
    let unknown = || Fault::new(format!("unknown quantity \"{id}\""), "the id of a quantity");
    let entry = catalogue::find(id.name()).ok_or_else(unknown)?;
    let amount = quantity::parse(text, entry).map_err(|error| {
        let why = error.to_string();
        let message = format!("\"{text}\" does not fit: {}", why.trim_end_matches('.'));
        Fault::new(message, format!("{} with its unit", entry.dimension.in_words()))
    })?;
    if !entry.admits(amount.si) {
        let message = format!("{} cannot be {text}", entry.label);
        return Err(Fault::new(message, "a number that is possible"));
    }
    Ok(Member { name: None, numbers: vec![(id, amount.si)] })
}

fn row(table: &'static str, name: &str, against: AnyId) -> Result<Member, Fault> {
    let rows = || tables(table).flat_map(|table| &table.rows);
    let row = rows().find(|row| row.id == name).ok_or_else(|| {
        Fault::new(format!("unknown row \"{name}\""), format!("a row of the table {table}"))
            .near(name, rows().map(|row| row.id.as_str()))
    })?;
    let numbers = row.values.iter().filter(|(id, _)| *id != against).filter_map(|(id, text)| {
        let entry = catalogue::find(id.name())?;
        Some((*id, quantity::parse(text, entry).ok()?.si))
    });
    Ok(Member { name: Some(short(row)), numbers: numbers.collect() })
}

/// What a row is called, without where it was measured and how wet it was.
fn short(row: &Row) -> String {
    let label = row.label.split(" (").next().unwrap_or(&row.label);
    label.split(", by ").next().unwrap_or(label).trim().to_owned()
}

/// Two rows of one name are numbered.
fn told_apart(mut members: Vec<Member>) -> Vec<Member> {
    let names: Vec<Option<String>> = members.iter().map(|member| member.name.clone()).collect();
    for (place, member) in members.iter_mut().enumerate() {
        let Some(name) = &mut member.name else { continue };
        let same = |other: &&Option<String>| other.as_ref() == Some(&*name);
        if names.iter().filter(same).count() > 1 {
            let before = names.iter().take(place).filter(same).count();
            *name = format!("{name} {}", before + 1);
        }
    }
    members
}
