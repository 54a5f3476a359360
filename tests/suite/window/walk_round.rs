//! The walk-round: what gives first, what would change it, and what is shown of it.

use heftwise::app::screen::Place;
use heftwise::app::shell::Message;
use heftwise::study::walk_round::{Verdict, moves, walk_round};
use iced::keyboard::{Modifiers, key::Named};

use super::rig::{NARROW, Rig, WIDE};

fn open() -> Rig {
    let mut rig = Rig::fresh();
    rig.send(Message::Go(Place::WalkRound));
    rig
}

/// The titles of the limits on the page, in its order.
fn titles(rig: &mut Rig) -> Vec<String> {
    let known: Vec<&str> =
        heftwise::study::walk_round::LIMITS.iter().map(|limit| limit.title).collect();
    rig.texts().into_iter().filter(|text| known.contains(&text.as_str())).collect()
}

#[test]
fn a_fold_says_what_would_change_a_limit() {
    let mut rig = open();
    let findings = walk_round(&rig.app.desk.outcome);
    let first = findings.iter().find(|finding| finding.margin.is_some()).unwrap();
    let told = moves(first.limit, &rig.app.desk.outcome);
    let strongest = told.free.first().or(told.bought.first()).expect("something helps");
    let words = format!("margin {}", strongest.effect());
    assert!(!rig.says(&words));
    rig.click("What would change this? +");
    assert!(rig.says(&words), "{words}");
    assert!(rig.says("What to measure first"));
    rig.click("What would change this? −");
    assert!(!rig.says(&words));
}

#[test]
fn a_filter_is_remembered_while_the_window_is_open() {
    let mut rig = open();
    let all = titles(&mut rig);
    let outcome = rig.app.desk.outcome.clone();
    let of = |wanted: fn(&Verdict) -> bool| -> Vec<String> {
        let findings = walk_round(&outcome);
        let found = findings.iter().filter(|it| wanted(&it.verdict));
        found.map(|it| it.limit.title.to_owned()).collect()
    };
    let applies = of(|verdict| *verdict != Verdict::DoesNotApply);
    assert_eq!(all, applies);
    for (word, wanted) in [
        ("Not known yet", (|it| matches!(it, Verdict::NotKnown(_))) as fn(&Verdict) -> bool),
        ("Gives or in doubt", |it| {
            matches!(it, Verdict::Gives | Verdict::Doubtful | Verdict::Invalid(_))
        }),
    ] {
        rig.click(word);
        assert_eq!(titles(&mut rig), of(wanted), "{word}");
        rig.send(Message::Go(Place::Contents));
        rig.send(Message::Go(Place::WalkRound));
        assert_eq!(titles(&mut rig), of(wanted), "{word} is remembered");
    }
    rig.click("Heat");
    let heat = titles(&mut rig);
    assert!(!heat.is_empty() && heat.len() < all.len(), "{heat:?}");
    rig.click("All");
    assert_eq!(titles(&mut rig), all);
}

#[test]
fn what_does_not_apply_is_folded_at_the_end_with_its_reason() {
    let mut rig = open();
    rig.send(Message::OpenDemo("peat-barrow"));
    let left_out: Vec<_> = walk_round(&rig.app.desk.outcome)
        .into_iter()
        .filter(|finding| finding.verdict == Verdict::DoesNotApply)
        .collect();
    assert!(!left_out.is_empty(), "an engine drives it");
    for finding in &left_out {
        assert!(!titles(&mut rig).contains(&finding.limit.title.to_owned()));
    }
    rig.click(format!("{} limits do not apply +", left_out.len()).as_str());
    for finding in &left_out {
        assert!(rig.says(finding.limit.title) && rig.says(&finding.sentence));
    }
    assert_eq!(
        titles(&mut rig).last().map(String::as_str),
        left_out.last().map(|it| it.limit.title)
    );
}

#[test]
fn it_follows_the_build_and_leads_to_the_lesson() {
    let mut rig = open();
    let before = rig.texts();
    rig.click("What would change this? +");
    rig.send(Message::OpenDemo("bullock"));
    assert!(rig.says("Walk round Bullock"));
    assert_ne!(rig.texts(), before);
    let why = rig.texts().into_iter().find(|text| text.starts_with("Why: ")).unwrap();
    rig.click(why.as_str());
    assert!(matches!(rig.app.place, Place::Lesson(_)));
}

#[test]
fn it_works_by_keys_on_a_narrow_window() {
    for size in [WIDE, NARROW] {
        let mut rig = open();
        rig.send(Message::Resized(size));
        rig.key(Named::F6, Modifiers::empty());
        for _ in 0..400 {
            if rig.says("alone, the way that helps") {
                break;
            }
            rig.key(Named::Tab, Modifiers::empty());
            let at = rig.focused().expect("something has the focus").bounds;
            let fold = rig.find("What would change this? +").map(|it| it.bounds());
            if fold.is_some_and(|fold| at.contains(fold.center())) {
                rig.key(Named::Enter, Modifiers::empty());
            }
        }
        assert!(rig.says("alone, the way that helps"));
    }
}
