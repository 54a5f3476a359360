//! What goes with the reader's own line: the range about it, and the lines of its family.

use plotters::prelude::{DrawingBackend, Polygon};

use super::{DrawError, Pen, Points};
use crate::plot::labels::family::MARK;
use crate::plot::labels::{Part, PlacedText};

/// The dashes of a family's lines, by rank: told apart without colour.
const DASHES: [&[f32]; 5] =
    [&[7.0, 3.0], &[2.0, 3.0], &[14.0, 4.0], &[7.0, 3.0, 2.0, 3.0], &[4.0, 7.0]];
/// The marks at their ends, by rank, as corners about the end: a diamond, a square, a triangle on
/// its base, one on its point, a bar.
const MARKS: [&[(f32, f32)]; 5] = [
    &[(0.0, -1.3), (1.3, 0.0), (0.0, 1.3), (-1.3, 0.0)],
    &[(-0.9, -0.9), (0.9, -0.9), (0.9, 0.9), (-0.9, 0.9)],
    &[(0.0, -1.2), (1.1, 0.8), (-1.1, 0.8)],
    &[(0.0, 1.2), (1.1, -0.8), (-1.1, -0.8)],
    &[(-0.4, -1.4), (0.4, -1.4), (0.4, 1.4), (-0.4, 1.4)],
];

impl<DB: DrawingBackend> Pen<'_, DB> {
    /// The range as a light fill.
    pub(super) fn range(&self, run: &[(f64, f64, f64)]) -> Result<(), DrawError<DB>> {
        let at = |x: f64, y: f64| self.px(self.layout.to_screen(self.spec, (x, y)));
        let below = run.iter().map(|(x, low, _)| at(*x, *low));
        let above = run.iter().rev().map(|(x, _, high)| at(*x, *high));
        let round: Points = below.chain(above).collect();
        self.area.draw(&Polygon::new(round, self.fill(self.style.range)))
    }

    /// The lines of the family, dashed by their rank, each with a mark at its end, or beside its
    /// name where that stands in the margin.
    pub(super) fn relatives(&self) -> Result<(), DrawError<DB>> {
        for line in &self.spec.relatives {
            let dashes = DASHES.get(line.rank).copied().unwrap_or_default();
            for run in &line.runs {
                self.line(run, self.style.relative, 1, dashes)?;
            }
            let Some(end) = line.runs.last().and_then(|run| run.last()) else { continue };
            let end = self.layout.to_screen(self.spec, *end);
            let edge = self.layout.plot.right();
            let named =
                |text: &&PlacedText| text.part == Part::Relative(line.rank) && text.x > edge;
            match self.words.iter().find(named) {
                Some(name) => {
                    let at = (edge + MARK * self.style.text_size, name.y);
                    self.path(&[end, at], self.style.relative, 1)?;
                    self.rank(at, line.rank)?;
                }
                None => self.rank(end, line.rank)?,
            }
        }
        Ok(())
    }

    /// The mark of a rank.
    fn rank(&self, at: (f32, f32), rank: usize) -> Result<(), DrawError<DB>> {
        let mark = MARKS.get(rank).copied().unwrap_or_default();
        self.polygon(at, 0.28 * self.style.text_size, mark, self.style.relative)
    }
}
