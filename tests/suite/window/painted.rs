//! What is painted of a frame: few pieces, and all that has changed.

use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use iced::advanced::renderer::Style;
use iced::keyboard::{Modifiers, key::Named};
use iced::mouse::{self, ScrollDelta};
use iced::{Event, Point, Rectangle, Size};

use super::canvas::Canvas;
use super::rig::{self, Rig};

fn canvas(rig: &Rig) -> Canvas {
    Canvas::new(Size::new(rig.size.width as u32, rig.size.height as u32))
}

/// By so much, of 255, a soft edge may differ that was cut by a piece; what stays behind differs by more.
const ROUNDING: u8 = 8;

/// Paints the window as it stands, the pieces that differ alone; the pieces. The pixels are those of a
/// window painted whole.
fn paint(rig: &mut Rig, canvas: &mut Canvas) -> Vec<Rectangle> {
    let (theme, cursor) = (rig.app.theme(), rig.cursor);
    let ground = theme.palette().background;
    let style = Style { text_color: theme.palette().text };
    let mut whole = self::canvas(rig);
    let pieces = rig.ui(|ui, renderer| {
        ui.draw(renderer, &theme, &style, cursor);
        whole.paint(renderer, ground);
        canvas.paint(renderer, ground)
    });
    let pairs = canvas.pixels.data().iter().zip(whole.pixels.data());
    let off = pairs.filter(|(painted, wanted)| painted.abs_diff(**wanted) > ROUNDING).count();
    assert_eq!(off, 0, "something stays behind beside {pieces:?}");
    pieces
}

fn turn_the_wheel(rig: &mut Rig, y: f32) {
    let delta = ScrollDelta::Pixels { x: 0.0, y };
    rig.feed(Event::Mouse(mouse::Event::WheelScrolled { delta }));
}

#[test]
fn a_lesson_that_scrolls_is_painted_in_one_piece() {
    let mut rig = rig::lesson("pressure");
    rig.point_at(Point::new(600.0, 400.0));
    let mut canvas = canvas(&rig);
    paint(&mut rig, &mut canvas);
    for (turn, y) in [-90.0, -90.0, -480.0, 45.5, -90.0].into_iter().enumerate() {
        turn_the_wheel(&mut rig, y);
        let pieces = paint(&mut rig, &mut canvas);
        assert!(pieces.len() <= 3, "turn {turn}: {pieces:?}");
    }
}

#[test]
fn other_screens_scroll_in_one_piece_too() {
    let mut rig = Rig::fresh();
    for place in [Place::BuildSheet, Place::WalkRound, Place::Contents] {
        rig.send(Message::Go(place.clone()));
        rig.point_at(Point::new(600.0, 400.0));
        let mut canvas = canvas(&rig);
        paint(&mut rig, &mut canvas);
        turn_the_wheel(&mut rig, -120.0);
        let pieces = paint(&mut rig, &mut canvas);
        let page = pieces.iter().any(|piece| piece.height > 0.8 * rig.size.height);
        assert!(page, "{place:?}: {pieces:?}");
    }
}

#[test]
fn an_edit_paints_what_it_changes_and_leaves_the_rest() {
    let mut rig = rig::lesson("pressure");
    rig.click(iced::widget::Id::new("margin:track-width"));
    let mut canvas = canvas(&rig);
    paint(&mut rig, &mut canvas);
    for key in [Named::ArrowUp, Named::ArrowUp, Named::ArrowDown] {
        rig.key(key, Modifiers::empty());
        let pieces = paint(&mut rig, &mut canvas);
        assert!(!pieces.is_empty());
    }
    rig.send(Message::Undo);
    paint(&mut rig, &mut canvas);
}
