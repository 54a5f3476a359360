//! Plots: what a plot is, where its parts go, and drawing it with any plotters backend.
//!
//! A plot is described once ([`PlotSpec`]) and laid out by pure functions ([`Layout`]); the
//! window and the SVG of a handout draw the same description.

mod axis;
mod draw;
pub mod formula;
mod labels;
mod layout;
mod letters;
mod reading;
mod run;
pub mod save;
pub mod sketch;
mod spec;
mod svg;

pub use axis::{Axis, Tick};
pub use draw::{DrawError, PlotStyle, Rgb, draw};
pub use labels::{Anchor, Part, PlacedText, texts};
pub use layout::{Layout, Rect, plot_rect};
pub use letters::{FAMILY, FONTS, options as picture_options};
pub use reading::{Reading, Table, figures, figures_of, reading, readings, stops, table, table_of};
pub use run::{Runner, panel_height, panels, run_svg};
pub use spec::{
    Band, Build, Dot, Edge, LimitRun, Line, PlotSpec, RangeRun, RelativeLine, Role, Shape, Side,
    Stroke,
};
pub use svg::svg;
