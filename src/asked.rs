//! What the live blocks of a lesson ask, as the rules and the drawings take it: for the window and for
//! paper alike.

use crate::lesson::{Curve, Run, Sketch, SketchLayer, SketchView, TargetBlock};
use crate::plot::sketch::{Show, View};
use crate::study::curve::{self, Scale};
use crate::study::{Wish, run};

/// The curve that a block asks for.
pub fn curve(asked: &Curve) -> curve::Ask {
    curve::Ask {
        find: asked.find,
        against: asked.against,
        from: asked.from,
        to: asked.to,
        scale: if asked.log { Scale::Log } else { Scale::Linear },
        limits: asked.limits.clone(),
        family: asked.family.clone(),
    }
}

/// The run that a block asks for.
pub fn run(asked: &Run) -> run::Ask {
    let Run { kind, from, to, speed, on, off, pulse, .. } = *asked;
    run::Ask { kind, from, to, speed, on, off, pulse }
}

/// From where a block shows the machine first, and what of it.
pub fn sketch(asked: &Sketch) -> (View, Show) {
    let view = match asked.view {
        SketchView::Side => View::Side,
        SketchView::Top => View::Top,
        SketchView::Rear => View::Rear,
    };
    let shows = |layer| asked.show.contains(&layer);
    let show = Show {
        pressure: shows(SketchLayer::Pressure),
        cg: shows(SketchLayer::Cg),
        weight: shows(SketchLayer::Weight),
        parts: shows(SketchLayer::Parts),
    };
    (view, show)
}

/// What a block wishes for, as its author has it.
pub fn wish(asked: &TargetBlock) -> Wish {
    Wish { make: asked.make, be: asked.be, by: asked.by, from: asked.from, to: asked.to }
}
