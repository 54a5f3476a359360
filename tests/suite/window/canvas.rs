//! The pixels of the window, painted as the software renderer paints them: what differs from the frame
//! before, piece by piece.

use iced::{Color, Rectangle, Renderer, Size};
use iced_test::renderer::graphics::{Viewport, damage};
use iced_tiny_skia::Layer;
use resvg::tiny_skia::{Mask, Pixmap};

/// What is painted on.
pub struct Canvas {
    pub pixels: Pixmap,
    mask: Mask,
    /// What the pixels show.
    shown: Option<Vec<Layer>>,
}

impl Canvas {
    /// Nothing yet, of a size.
    pub fn new(size: Size<u32>) -> Self {
        let pixels = Pixmap::new(size.width, size.height).unwrap();
        Self { pixels, mask: Mask::new(size.width, size.height).unwrap(), shown: None }
    }

    /// Paints what was drawn, as far as it differs from what the pixels show; the pieces painted.
    pub fn paint(&mut self, renderer: &mut Renderer, ground: Color) -> Vec<Rectangle> {
        let size = Size::new(self.pixels.width(), self.pixels.height());
        let viewport = Viewport::with_physical_size(size, 1.0);
        let all = Rectangle::with_size(viewport.logical_size());
        let shown = self.shown.replace(renderer.layers().to_vec());
        let changed = shown.map_or_else(
            || vec![all],
            |shown| {
                let now = renderer.layers();
                damage::diff(&shown, now, |layer| vec![layer.bounds], Layer::damage)
            },
        );
        let changed = damage::group(changed, all);
        let pixels = &mut self.pixels.as_mut();
        renderer.draw(pixels, &mut self.mask, &viewport, &changed, ground);
        changed
    }
}
