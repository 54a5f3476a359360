//! What a run block works out of the builds, once for each change.

use iced::widget::canvas::Cache;

use crate::app::desk::Desk;
use crate::app::settings::Settings;
use crate::asked;
use crate::lesson::Run;
use crate::plot::{PlotSpec, Role, Runner, Table, panels, table_of};
use crate::quantity::Units;
use crate::study;

/// A run drawn, and for which builds it was drawn.
pub struct Told {
    /// One plot for each thing shown, with its drawing.
    pub panels: Vec<(PlotSpec, Cache)>,
    /// The runs, the reader's own first.
    pub runs: Vec<(Role, String, study::Run)>,
    /// What happens, a sentence a build.
    pub happens: Vec<String>,
    /// What is taken for granted.
    pub assumes: Vec<String>,
    /// The plots as they are saved, with every name.
    pub pictured: Vec<PlotSpec>,
    /// The same in figures.
    pub table: Table,
}

/// What a drawing depends on.
#[derive(Debug, Clone, PartialEq)]
pub struct Key {
    revision: u64,
    company: u64,
    units: Units,
    name: String,
    dark: bool,
}

impl Key {
    /// What it depends on now.
    pub fn of(desk: &Desk, settings: &Settings, dark: bool) -> Self {
        Self {
            revision: desk.revision(),
            company: desk.company.changes(),
            units: settings.units.clone(),
            name: desk.name(),
            dark,
        }
    }
}

impl Told {
    /// Works out the run of the reader's build and of its companions.
    ///
    /// # Errors
    /// In words, why the reader's build makes no run.
    pub fn of(asked: &Run, desk: &Desk, units: &Units) -> Result<Self, String> {
        let ask = asked::run(asked);
        let own = study::Run::of(&ask, &desk.outcome.givens).map_err(|why| why.to_string())?;
        let mut runs = vec![(Role::Yours, desk.name(), own)];
        runs.extend(desk.company.all().iter().filter_map(|companion| {
            let run = study::Run::of(&ask, &companion.outcome.givens).ok()?;
            Some((companion.role, companion.name.clone(), run))
        }));
        let runners: Vec<Runner<'_>> =
            runs.iter().map(|(_, name, run)| Runner { name, run }).collect();
        let mut specs = panels(&runners, &asked.show, units);
        let (table, pictured) = (table_of(&specs), specs.clone());
        // Several short lines leave no sure place for their names, which stand above the plots.
        specs.iter_mut().flat_map(|spec| &mut spec.lines).for_each(|line| line.label.clear());
        let happens = runs.iter().map(|(role, name, run)| match role {
            Role::Yours => run.sentence(units),
            _ => format!("{name}: {}", run.sentence(units)),
        });
        let assumes = runs.iter().take(1).flat_map(|(_, _, run)| &run.assumes);
        let assumes = assumes.map(|words| words.told(units)).collect();
        let happens = happens.collect();
        let panels = specs.into_iter().map(|spec| (spec, Cache::new())).collect();
        Ok(Self { panels, runs, happens, assumes, pictured, table })
    }

    /// How long the plots last, and from when, in seconds: the longest of the runs.
    pub fn span(&self) -> (f64, f64) {
        let unit = |value: fn(&PlotSpec) -> f64| {
            self.panels.first().map_or(0.0, |(spec, _)| spec.x.unit.to_si(value(spec)))
        };
        (unit(|spec| spec.x.from), unit(|spec| spec.x.to))
    }
}
