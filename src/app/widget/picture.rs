//! Pictures of a lesson's folder, in the ink of the page.

use iced::widget::{image, svg};
use iced::{Element, Length};

/// The largest picture taken, in bytes.
const LARGEST: usize = 8 << 20;

/// A picture ready to be shown by day and by night.
#[derive(Debug, Clone)]
pub enum Picture {
    /// Drawn lines, in the ink of the day and of the night.
    Drawing {
        /// On light paper.
        day: svg::Handle,
        /// On dark paper.
        night: svg::Handle,
        /// Its own width in pixels.
        width: f32,
    },
    /// Dots.
    Photo(image::Handle),
    /// It cannot be shown, and why.
    Broken(String),
}

/// Makes a picture of a file's bytes; SVG is redrawn so that it reads nothing from outside.
pub fn read(file: &str, bytes: &[u8]) -> Picture {
    if bytes.len() > LARGEST {
        return Picture::Broken(format!("{file} is larger than 8 MiB."));
    }
    if !file.to_lowercase().ends_with(".svg") {
        return Picture::Photo(image::Handle::from_bytes(bytes.to_vec()));
    }
    match usvg::Tree::from_data(bytes, &crate::plot::picture_options()) {
        Ok(tree) => {
            let day = tree.to_string(&usvg::WriteOptions::default());
            let night = day.replace("#111111", "#ede7da").replace("#0072b2", "#56b4e9");
            Picture::Drawing {
                day: svg::Handle::from_memory(day.into_bytes()),
                night: svg::Handle::from_memory(night.into_bytes()),
                width: tree.size().width(),
            }
        }
        Err(error) => Picture::Broken(format!("{file} cannot be drawn: {error}.")),
    }
}

/// Shows a picture as wide as its place, never wider than it is.
pub fn show<'a, Message: 'a>(picture: &Picture, dark: bool) -> Element<'a, Message> {
    match picture {
        Picture::Drawing { day, night, width } => {
            let drawing = svg(if dark { night.clone() } else { day.clone() }).width(Length::Fill);
            iced::widget::container(drawing).max_width(*width).into()
        }
        Picture::Photo(handle) => image(handle.clone()).into(),
        Picture::Broken(words) => iced::widget::text(words.clone()).into(),
    }
}
