//! The names of a family's lines, at their ends.

use super::{Anchor, LINE, Part, PlacedText, Placer};
use crate::plot::spec::PlotSpec;

/// How near to the right edge, in pixels, a line ends that is named in the margin.
const NEAR: f32 = 3.0;

/// Where a name in the margin starts, from the plot's right edge, in text sizes.
pub(in crate::plot) const NAME: f32 = 1.6;
/// Where its mark stands.
pub(in crate::plot) const MARK: f32 = 1.05;

impl Placer<'_> {
    /// Names each line beside its end: in the right margin, pushed apart where they would touch,
    /// or in the plot where the line ends sooner.
    pub(super) fn family(&mut self, spec: &PlotSpec) {
        let (plot, size, surface) = (self.layout.plot, self.size(), self.layout.surface());
        let mut in_margin: Vec<(usize, f32, &str)> = Vec::new();
        let mut inside: Vec<(usize, (f32, f32), &str)> = Vec::new();
        for line in &spec.relatives {
            let Some(end) = line.runs.last().and_then(|run| run.last()) else { continue };
            let (x, y) = self.layout.to_screen(spec, *end);
            if x >= plot.right() - NEAR {
                in_margin.push((line.rank, y, &line.label));
            } else {
                inside.push((line.rank, (x, y), &line.label));
            }
        }
        let x = plot.right() + NAME * size;
        in_margin.sort_by(|a, b| a.1.total_cmp(&b.1));
        let heights: Vec<f32> = in_margin.iter().map(|(_, y, _)| *y).collect();
        let heights = apart(&heights, LINE * size, (plot.y, plot.bottom() - 0.1 * size));
        for ((rank, _, label), y) in in_margin.into_iter().zip(heights) {
            let text = self.shortened(label, surface.right() - x - 0.1 * size);
            let part = Part::Relative(rank);
            self.put(PlacedText { text, x, y, anchor: Anchor::Start, part }, &surface);
        }
        for (rank, at, label) in inside {
            self.beside(label, at, Part::Relative(rank));
        }
    }
}

/// Heights in order, moved as little as it takes to keep them `gap` apart and within the ends.
fn apart(heights: &[f32], gap: f32, (top, bottom): (f32, f32)) -> Vec<f32> {
    let mut apart: Vec<f32> = Vec::with_capacity(heights.len());
    for &height in heights {
        let least = apart.last().map_or(top, |above| above + gap + 0.01);
        apart.push(height.max(least));
    }
    let mut most = bottom;
    for height in apart.iter_mut().rev() {
        *height = height.min(most);
        most = *height - gap - 0.01;
    }
    apart
}

#[cfg(test)]
mod tests {
    use super::apart;

    #[test]
    fn names_are_pushed_apart_and_stay_in_order() {
        let moved = apart(&[10.0, 11.0, 90.0, 99.0], 10.0, (0.0, 100.0));
        assert!(moved.windows(2).all(|pair| pair[1] - pair[0] >= 10.0), "{moved:?}");
        assert!(moved[0] == 10.0 && moved[3] <= 100.0);
    }
}
