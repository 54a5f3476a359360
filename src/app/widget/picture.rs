//! Pictures of a lesson's folder, in the ink of the page.

use std::io::Cursor;

use ::image::ImageReader;
use iced::widget::{image, svg};
use iced::{Element, Length};

/// The largest picture taken, in bytes.
const LARGEST: usize = 8 << 20;
/// The widest and the highest picture taken, in pixels: a small file can unpack to any number.
const LONGEST: u32 = 8192;
/// How a packed file begins (RFC 1952).
const GZIP: [u8; 2] = [0x1f, 0x8b];
/// How deep the groups of a drawing may stand inside each other.
const DEEPEST: usize = 32;
/// The stack that reading a drawing is given, in bytes: it steps into groups up to a thousand deep,
/// which an ordinary stack does not hold.
const STACK: usize = 128 << 20;

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
        return Picture::Broken(format!("{file} is larger than 8 MiB. Save it smaller."));
    }
    let read = if file.to_lowercase().ends_with(".svg") { drawing(bytes) } else { photo(bytes) };
    read.unwrap_or_else(|why| Picture::Broken(format!("{file} cannot be drawn: {why}.")))
}

fn photo(bytes: &[u8]) -> Result<Picture, String> {
    let reader = ImageReader::new(Cursor::new(bytes)).with_guessed_format();
    let size = reader.map_err(|error| error.to_string())?.into_dimensions();
    let (width, height) = size.map_err(|error| error.to_string())?;
    if width.max(height) > LONGEST {
        return Err(format!(
            "it is {width} by {height} pixels, and {LONGEST} is the most either way"
        ));
    }
    Ok(Picture::Photo(image::Handle::from_bytes(bytes.to_vec())))
}

/// Reads a drawing beside the window's own stack, whose overflow would end the program.
fn drawing(bytes: &[u8]) -> Result<Picture, String> {
    std::thread::scope(|scope| {
        let reading = std::thread::Builder::new()
            .stack_size(STACK)
            .spawn_scoped(scope, || drawn(bytes))
            .map_err(|error| error.to_string())?;
        reading.join().unwrap_or_else(|_| Err("it is broken".to_owned()))
    })
}

fn drawn(bytes: &[u8]) -> Result<Picture, String> {
    if bytes.starts_with(&GZIP) {
        return Err("it is packed; save it as plain SVG".to_owned());
    }
    let tree = usvg::Tree::from_data(bytes, &crate::plot::picture_options())
        .map_err(|error| error.to_string())?;
    // An effect can ask for any amount of work with a few letters.
    if !tree.filters().is_empty() {
        return Err("it has filter effects; draw it with shapes and words alone".to_owned());
    }
    let (width, height) = (tree.size().width(), tree.size().height());
    if width.max(height) > LONGEST as f32 {
        return Err(format!(
            "it is {width:.0} by {height:.0}, and {LONGEST} is the most either way"
        ));
    }
    if depth(tree.root()) > DEEPEST {
        return Err(format!("its groups stand more than {DEEPEST} deep inside each other"));
    }
    let day = tree.to_string(&usvg::WriteOptions::default());
    let night = day.replace("#111111", "#ede7da").replace("#0072b2", "#56b4e9");
    Ok(Picture::Drawing {
        day: svg::Handle::from_memory(day.into_bytes()),
        night: svg::Handle::from_memory(night.into_bytes()),
        width,
    })
}

/// How many groups stand inside each other.
fn depth(group: &usvg::Group) -> usize {
    let groups = group.children().iter().filter_map(|node| match node {
        usvg::Node::Group(group) => Some(depth(group)),
        _ => None,
    });
    1 + groups.max().unwrap_or(0)
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
