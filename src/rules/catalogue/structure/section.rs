//! Areas and second moments of the sections a beam may have.

use crate::physics::structure;
use crate::quantity::catalogue::structure::*;
use crate::quantity::{AnyId, Area, Id, Length, SecondMoment, Volume};
use crate::rules::{Caution, Fault, Maybe, Origin, Rule, Values};

const AREA_GEOMETRY: &str = "Geometry of plane figures";
const STATICS: &str = "Baker and Haynes, Engineering Statics: Open and Interactive, chapter 10";
const ABOUT: &[&str] = &["It bends up and down, about the level line through its middle."];
const CORNERS: &[&str] = &[
    "It bends up and down, about the level line through its middle.",
    "What the round corners take off is four bits of (1 − π/4) r² each, outside less inside, each with the square of its height.",
];
const ONE_KIND: &[&str] =
    &["The first section described counts: bar, round, tube, box, then web and flanges."];
const DESCRIBED: &str = "A beam of one section all along.";

const SHARP: &[Caution] = &[Caution {
    when: |values| values.origin(BOX_TUBE_CORNER) == Some(Origin::Assumed),
    says: "The corners are taken as sharp; rolled tube has round ones and is up to a tenth less stiff. Give the corner radius.",
}];
const SEVERAL: &[Caution] = &[Caution {
    when: several,
    says: "More than one section is described: the first counts, in the order bar, round, tube, box, web and flanges.",
}];

pub(super) fn rules() -> Vec<Rule> {
    let mut rules = areas();
    rules.extend(second_moments());
    rules.extend(section_moduli());
    rules.extend(whichever());
    rules
}

fn areas() -> Vec<Rule> {
    let area = |rule: Rule| {
        rule.assumes(&["All of the section is material; holes are left out."])
            .holds("Any size.")
            .source(AREA_GEOMETRY)
    };
    vec![
        area(Rule::new(BAR_AREA, (BAR_WIDTH, BAR_DEPTH), structure::rectangle_area))
            .title("Width times depth")
            .formula(r"\q{bar-area} = \q{bar-width} \cdot \q{bar-depth}"),
        area(Rule::new(ROUND_AREA, (ROUND_DIAMETER,), structure::circle_area))
            .title("Area of a circle")
            .formula(r"\q{round-area} = \dfrac{\pi}{4} \, \q{round-diameter}^2"),
        area(Rule::new(TUBE_AREA, (TUBE_DIAMETER, TUBE_WALL), structure::round_tube_area))
            .title("The outer circle less the bore")
            .formula(r"\q{tube-area} = \pi \, \q{tube-wall} \left( \q{tube-diameter} - \q{tube-wall} \right)"),
        area(Rule::new(BOX_TUBE_AREA, (BOX_TUBE_WIDTH, BOX_TUBE_DEPTH, BOX_TUBE_WALL, BOX_TUBE_CORNER), structure::box_tube_area))
            .title("The outer rectangle less the inner, corners rounded")
            .formula(r"\q{box-tube-area} = \q{box-tube-width} \cdot \q{box-tube-depth} - (\q{box-tube-width} - 2 \, \q{box-tube-wall})(\q{box-tube-depth} - 2 \, \q{box-tube-wall}) - (4 - \pi) \left( \q{box-tube-corner}^2 - \max(\q{box-tube-corner} - \q{box-tube-wall}, 0)^2 \right)")
            .cautions(SHARP),
        area(Rule::new(FLANGED_AREA, (FLANGE_WIDTH, FLANGE_THICKNESS, WEB_THICKNESS, WEB_DEPTH), flanged_area))
            .title("Two flanges and the web")
            .formula(r"\q{flanged-area} = 2 \, \q{flange-width} \cdot \q{flange-thickness} + \q{web-thickness} \cdot \q{web-depth}"),
    ]
}

fn second_moments() -> Vec<Rule> {
    let second = |rule: Rule| rule.assumes(ABOUT).source(STATICS);
    vec![
        second(Rule::new(BAR_SECOND_MOMENT, (BAR_WIDTH, BAR_DEPTH), structure::rectangle_second_moment))
            .title("Depth counts with its cube")
            .formula(r"\q{bar-second-moment} = \dfrac{\q{bar-width} \cdot \q{bar-depth}^3}{12}")
            .holds("Bars that do not buckle or twist aside."),
        second(Rule::new(ROUND_SECOND_MOMENT, (ROUND_DIAMETER,), structure::circle_second_moment))
            .title("Diameter counts with its fourth power")
            .formula(r"\q{round-second-moment} = \dfrac{\pi}{64} \, \q{round-diameter}^4")
            .holds("Solid round bars."),
        second(Rule::new(TUBE_SECOND_MOMENT, (TUBE_DIAMETER, TUBE_WALL), structure::round_tube_second_moment))
            .title("The outer circle less the bore")
            .formula(r"\q{tube-second-moment} = \dfrac{\pi}{64} \left( \q{tube-diameter}^4 - (\q{tube-diameter} - 2 \, \q{tube-wall})^4 \right)")
            .holds("Tubes whose wall is not so thin that it dents: about a fiftieth of the diameter or more."),
        second(Rule::new(
            BOX_TUBE_SECOND_MOMENT,
            (BOX_TUBE_WIDTH, BOX_TUBE_DEPTH, BOX_TUBE_WALL, BOX_TUBE_CORNER),
            structure::box_tube_second_moment,
        ))
        .title("The outer rectangle less the inner, corners rounded")
        .formula(r"\q{box-tube-second-moment} = \dfrac{\q{box-tube-width} \cdot \q{box-tube-depth}^3 - (\q{box-tube-width} - 2 \, \q{box-tube-wall})(\q{box-tube-depth} - 2 \, \q{box-tube-wall})^3}{12} - I_{\mathrm{corners}}(\q{box-tube-corner})")
        .holds("Tubes whose wall is not so thin that it dents: about a fiftieth of the side or more.")
        .assumes(CORNERS)
        .cautions(SHARP),
        second(Rule::new(
            FLANGED_SECOND_MOMENT,
            (FLANGE_WIDTH, FLANGE_THICKNESS, WEB_THICKNESS, WEB_DEPTH),
            flanged_second_moment,
        ))
        .title("What is far from the middle counts most")
        .formula(r"\q{flanged-second-moment} = \dfrac{\q{web-thickness} \cdot \q{web-depth}^3}{12} + 2 \left( \dfrac{\q{flange-width} \cdot \q{flange-thickness}^3}{12} + \q{flange-width} \cdot \q{flange-thickness} \left( \dfrac{\q{web-depth} + \q{flange-thickness}}{2} \right)^2 \right)")
        .holds("Flanges firmly joined to the web all along: a loose joint gives most of it away."),
    ]
}

fn section_moduli() -> Vec<Rule> {
    let modulus = |rule: Rule| {
        rule.title("Second moment over the outermost fibre")
            .assumes(ABOUT)
            .holds("Sections that are the same above and below their middle.")
            .source("Gere, Mechanics of Materials, section 5.6 (from memory)")
    };
    vec![
        modulus(Rule::new(BAR_SECTION_MODULUS, (BAR_SECOND_MOMENT, BAR_DEPTH), modulus_of_depth))
            .formula(r"\q{bar-section-modulus} = \dfrac{2 \, \q{bar-second-moment}}{\q{bar-depth}}"),
        modulus(Rule::new(ROUND_SECTION_MODULUS, (ROUND_SECOND_MOMENT, ROUND_DIAMETER), modulus_of_depth))
            .formula(r"\q{round-section-modulus} = \dfrac{2 \, \q{round-second-moment}}{\q{round-diameter}}"),
        modulus(Rule::new(TUBE_SECTION_MODULUS, (TUBE_SECOND_MOMENT, TUBE_DIAMETER), modulus_of_depth))
            .formula(r"\q{tube-section-modulus} = \dfrac{2 \, \q{tube-second-moment}}{\q{tube-diameter}}"),
        modulus(Rule::new(BOX_TUBE_SECTION_MODULUS, (BOX_TUBE_SECOND_MOMENT, BOX_TUBE_DEPTH), modulus_of_depth))
            .formula(r"\q{box-tube-section-modulus} = \dfrac{2 \, \q{box-tube-second-moment}}{\q{box-tube-depth}}"),
        modulus(Rule::new(
            FLANGED_SECTION_MODULUS,
            (FLANGED_SECOND_MOMENT, FLANGE_THICKNESS, WEB_DEPTH),
            flanged_modulus,
        ))
        .formula(r"\q{flanged-section-modulus} = \dfrac{2 \, \q{flanged-second-moment}}{\q{web-depth} + 2 \, \q{flange-thickness}}"),
    ]
}

fn whichever() -> Vec<Rule> {
    vec![
        Rule::new(
            SECTION_AREA,
            (
                Maybe(BAR_AREA),
                Maybe(ROUND_AREA),
                Maybe(TUBE_AREA),
                Maybe(BOX_TUBE_AREA),
                Maybe(FLANGED_AREA),
            ),
            section_area,
        )
        .title("The section described")
        .formula(r"\q{section-area} = \q{bar-area} \text{ or } \q{round-area} \text{ or } \q{tube-area} \text{ or } \q{box-tube-area} \text{ or } \q{flanged-area}")
        .assumes(ONE_KIND)
        .holds(DESCRIBED)
        .source(AREA_GEOMETRY)
        .cautions(SEVERAL),
        Rule::new(
            SECOND_MOMENT,
            (
                Maybe(BAR_SECOND_MOMENT),
                Maybe(ROUND_SECOND_MOMENT),
                Maybe(TUBE_SECOND_MOMENT),
                Maybe(BOX_TUBE_SECOND_MOMENT),
                Maybe(FLANGED_SECOND_MOMENT),
            ),
            second_moment,
        )
        .title("The section described")
        .formula(r"\q{second-moment} = \q{bar-second-moment} \text{ or } \q{round-second-moment} \text{ or } \q{tube-second-moment} \text{ or } \q{box-tube-second-moment} \text{ or } \q{flanged-second-moment}")
        .assumes(ONE_KIND)
        .holds(DESCRIBED)
        .source(STATICS)
        .cautions(SEVERAL),
        Rule::new(
            SECTION_MODULUS,
            (
                Maybe(BAR_SECTION_MODULUS),
                Maybe(ROUND_SECTION_MODULUS),
                Maybe(TUBE_SECTION_MODULUS),
                Maybe(BOX_TUBE_SECTION_MODULUS),
                Maybe(FLANGED_SECTION_MODULUS),
            ),
            section_modulus,
        )
        .title("The section described")
        .formula(r"\q{section-modulus} = \q{bar-section-modulus} \text{ or } \q{round-section-modulus} \text{ or } \q{tube-section-modulus} \text{ or } \q{box-tube-section-modulus} \text{ or } \q{flanged-section-modulus}")
        .assumes(ONE_KIND)
        .holds(DESCRIBED)
        .source(STATICS)
        .cautions(SEVERAL),
    ]
}

fn flanged_area(width: Length, thickness: Length, web: Length, depth: Length) -> Area {
    structure::flanged_area((width, thickness), (web, depth))
}

fn flanged_second_moment(
    width: Length,
    thickness: Length,
    web: Length,
    depth: Length,
) -> SecondMoment {
    structure::flanged_second_moment((width, thickness), (web, depth))
}

fn section_area(
    bar: Option<Area>,
    round: Option<Area>,
    tube: Option<Area>,
    hollow: Option<Area>,
    flanged: Option<Area>,
) -> Result<Area, Fault> {
    first(
        [bar, round, tube, hollow, flanged],
        [BAR_AREA, ROUND_AREA, TUBE_AREA, BOX_TUBE_AREA, FLANGED_AREA].map(|id| id.any()),
    )
}

fn second_moment(
    bar: Option<SecondMoment>,
    round: Option<SecondMoment>,
    tube: Option<SecondMoment>,
    hollow: Option<SecondMoment>,
    flanged: Option<SecondMoment>,
) -> Result<SecondMoment, Fault> {
    first(
        [bar, round, tube, hollow, flanged],
        [
            BAR_SECOND_MOMENT,
            ROUND_SECOND_MOMENT,
            TUBE_SECOND_MOMENT,
            BOX_TUBE_SECOND_MOMENT,
            FLANGED_SECOND_MOMENT,
        ]
        .map(|id| id.any()),
    )
}

fn section_modulus(
    bar: Option<Volume>,
    round: Option<Volume>,
    tube: Option<Volume>,
    hollow: Option<Volume>,
    flanged: Option<Volume>,
) -> Result<Volume, Fault> {
    first(
        [bar, round, tube, hollow, flanged],
        [
            BAR_SECTION_MODULUS,
            ROUND_SECTION_MODULUS,
            TUBE_SECTION_MODULUS,
            BOX_TUBE_SECTION_MODULUS,
            FLANGED_SECTION_MODULUS,
        ]
        .map(|id| id.any()),
    )
}

fn modulus_of_depth(second_moment: SecondMoment, depth: Length) -> Volume {
    structure::section_modulus(second_moment, depth / 2.0)
}

fn flanged_modulus(second_moment: SecondMoment, flange: Length, web: Length) -> Volume {
    modulus_of_depth(second_moment, web + flange * 2.0)
}

fn first<Q>(found: [Option<Q>; 5], ids: [AnyId; 5]) -> Result<Q, Fault> {
    found.into_iter().flatten().next().ok_or_else(|| Fault::NeedsOneOf(ids.to_vec()))
}

/// The numbers that describe each kind of section.
const KINDS: [&[Id<Length>]; 5] = [
    &[BAR_WIDTH, BAR_DEPTH],
    &[ROUND_DIAMETER],
    &[TUBE_DIAMETER, TUBE_WALL],
    &[BOX_TUBE_WIDTH, BOX_TUBE_DEPTH, BOX_TUBE_WALL],
    &[FLANGE_WIDTH, FLANGE_THICKNESS, WEB_THICKNESS, WEB_DEPTH],
];

fn several(values: &Values) -> bool {
    let described = |kind: &&&[Id<Length>]| kind.iter().all(|id| values.si(*id).is_some());
    KINDS.iter().filter(described).count() > 1
}
