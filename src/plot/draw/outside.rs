//! Builds that lie outside the plot.

use plotters::prelude::DrawingBackend;

use super::{DrawError, Pen};
use crate::plot::spec::{Edge, Side};

/// An arrow's corners, forward from its point and aside: a head and a shaft.
const ARROW: [(f32, f32); 7] =
    [(0.0, 0.0), (-1.3, 0.9), (-1.3, 0.3), (-2.6, 0.3), (-2.6, -0.3), (-1.3, -0.3), (-1.3, -0.9)];

impl<DB: DrawingBackend> Pen<'_, DB> {
    /// An arrow at the edge, pointing to where the build lies.
    pub(super) fn edge(&self, edge: &Edge) -> Result<(), DrawError<DB>> {
        let at = self.layout.to_screen(self.spec, (edge.x, edge.y));
        let turned = |(forward, aside): (f32, f32)| match edge.side {
            Side::Left => (-forward, aside),
            Side::Right => (forward, aside),
            Side::Below => (aside, forward),
            Side::Above => (aside, -forward),
        };
        let colour = self.style.of(edge.role);
        self.polygon(at, 0.5 * self.style.text_size, &ARROW.map(turned), colour)
    }
}
