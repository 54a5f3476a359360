//! The reader's notebook on paper.

use super::page::{Paper, file};
use super::{Ink, Subject, prose};
use crate::lesson::page;
use crate::notebook::{Notebook, markdown};
use crate::quantity::Units;

/// The notebook as one HTML file; `titles` are the lessons' ids and titles.
pub fn notebook(
    notebook: &Notebook,
    titles: &[(&str, &str)],
    subject: &Subject,
    units: &Units,
    paper: Paper,
) -> String {
    let text = markdown(notebook, titles, units);
    let read = page(&text, "notebook");
    let ink = Ink { subject, companion: None, units, picture: &|_| None, key: true };
    file("Notebook", paper, &[prose::blocks(&read.blocks, ink)])
}
