//! Plots: what a plot is, where its parts go, and drawing it with any plotters backend.
//!
//! A plot is described once ([`PlotSpec`]) and laid out by pure functions ([`Layout`]); the
//! window and the SVG of a handout draw the same description.

mod axis;
mod draw;
mod labels;
mod layout;
mod letters;
mod reading;
pub mod save;
pub mod sketch;
mod spec;
mod svg;

pub use axis::{Axis, Tick};
pub use draw::{DrawError, PlotStyle, Rgb, draw};
pub use labels::{Anchor, Part, PlacedText, texts};
pub use layout::{Layout, Rect, plot_rect};
pub use letters::{FAMILY, FONTS, options as picture_options};
pub use reading::{Reading, Table, figures, reading, readings, stops, table};
pub use spec::{
    Band, Build, Dot, Edge, LimitRun, Line, PlotSpec, RangeRun, RelativeLine, Role, Shape, Side,
    Stroke,
};
pub use svg::svg;
