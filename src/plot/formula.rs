//! A formula as a picture: TeX laid out and drawn as a self-contained SVG, for the window and paper.

use std::collections::HashMap;
use std::sync::{Arc, LazyLock, Mutex, PoisonError};

use ratex_layout::{LayoutOptions, layout, to_display_list};
use ratex_svg::{SvgOptions, render_to_svg};
use ratex_types::math_style::MathStyle;

/// Units of the picture to an em; it is a vector, so this only sets its numbers.
const EM: f64 = 40.0;
/// Room around a formula, in em: pictures are cut off at whole pixels.
pub const ROOM: f32 = 0.08;

/// A formula laid out: a picture and its measures in em, without the room around it.
#[derive(Debug, Clone, PartialEq)]
pub struct Formula {
    /// The picture, as SVG with its glyphs.
    pub svg: String,
    /// Its width.
    pub width: f32,
    /// How far it rises above the baseline.
    pub height: f32,
    /// How far it falls under the baseline.
    pub depth: f32,
}

/// Formulas by their TeX and whether they stand on a line of their own.
type Table = HashMap<(String, bool), Option<Arc<Formula>>>;

/// Formulas laid out so far. Layout is pure, so a formula is laid out once a session; the number of
/// workings is unbounded while a slider moves, so the table is emptied when it grows large.
static LAID_OUT: LazyLock<Mutex<Table>> = LazyLock::new(|| Mutex::new(HashMap::new()));
const KEPT: usize = 512;

/// Lays out TeX, on a line of its own or within running text; nothing if it cannot be read.
pub fn formula(tex: &str, on_its_own: bool) -> Option<Arc<Formula>> {
    let key = (tex.to_owned(), on_its_own);
    let mut table = LAID_OUT.lock().unwrap_or_else(PoisonError::into_inner);
    if let Some(known) = table.get(&key) {
        return known.clone();
    }
    if table.len() >= KEPT {
        table.clear();
    }
    let fresh = lay_out(tex, on_its_own).map(Arc::new);
    table.insert(key, fresh.clone());
    fresh
}

fn lay_out(tex: &str, on_its_own: bool) -> Option<Formula> {
    let nodes = ratex_parser::parse(tex).ok()?;
    let style = if on_its_own { MathStyle::Display } else { MathStyle::Text };
    let boxed = layout(&nodes, &LayoutOptions { style, ..LayoutOptions::default() });
    let list = to_display_list(&boxed);
    let options = SvgOptions {
        font_size: EM,
        padding: EM * f64::from(ROOM),
        embed_glyphs: true,
        ..Default::default()
    };
    Some(Formula {
        svg: render_to_svg(&list, &options),
        width: list.width as f32,
        height: list.height as f32,
        depth: list.depth as f32,
    })
}
