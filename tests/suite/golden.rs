//! Tables reckoned by other people's programs, kept beside the scripts that made them.

use approx::assert_relative_eq;
use heftwise::physics::motion::{Drive, run_up};
use heftwise::quantity::Measure;

fn of<Q: Measure>(si: f64) -> Q {
    Q::from_si(si)
}

/// `tests/golden/run_up.py`: scipy's Radau method over time, where ours goes over speed.
#[test]
fn runs_to_a_speed_as_scipy_integrates_them() {
    let table = include_str!("../golden/run_up.csv");
    let mut rows = 0;
    for line in table.lines().filter(|line| !line.starts_with('#')) {
        let fields: Vec<Option<f64>> = line.split(',').map(|field| field.parse().ok()).collect();
        let number = |place: usize| fields[place].expect("a number");
        let drive = Drive {
            power: fields[0].map(of),
            torque_force: fields[1].map(of),
            thrust_limit: fields[2].map(of),
            resistance: of(number(3)),
            mass: of(number(5)),
            equivalent_mass: of(number(6)),
        };
        let run = run_up(&drive, of(number(7)), of(number(4))).expect(line);
        assert_relative_eq!(run.time.si(), number(8), max_relative = 1e-6);
        assert_relative_eq!(run.distance.si(), number(9), max_relative = 1e-6);
        rows += 1;
    }
    assert_eq!(rows, 10);
}
