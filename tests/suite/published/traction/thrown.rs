//! Thrust from what is thrown back.

use heftwise::quantity::catalogue::{motion::*, traction::*};

use super::super::{Case, Expect::Found, check, read};

pub(crate) const CASES: &[Case] = &[read(
    "fire-hose-50kg-per-second",
    0.003,
    &[(THROWN_FLOW.any(), 50.0), (THROW_SPEED.any(), 42.0), (DRIVING_SPEED.any(), 0.0)],
    &[Found(THROWN_THRUST.any(), 2.10e3)],
    "OpenStax, College Physics, section 8.2 Impulse, problem on a fire hose; read as quoted in a public course text",
    "Printed. The force of the stream on the wall; what throws it back from rest feels the same.",
)];

#[test]
fn thrown() {
    check(CASES);
}
