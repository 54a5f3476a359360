//! Adding up along the way what each small step brings.

use differential_equations::prelude::*;

/// Rates that depend on nothing but the place.
struct Rates<F>(F);

impl<const N: usize, F: Fn(f64) -> [f64; N]> ODE<f64, [f64; N]> for Rates<F> {
    fn diff(&self, at: f64, _: &[f64; N], rates: &mut [f64; N]) {
        *rates = (self.0)(at);
    }
}

/// What the rates have added up to at each of the places, nothing at the first.
///
/// Places increasing, rates finite between them. Dormand and Prince's Runge-Kutta method of order 8,
/// from each place to the next, relative tolerance 10⁻⁹. Nothing when a stretch cannot be added up.
/// Source: E. Hairer, S. P. Nørsett, G. Wanner, Solving Ordinary Differential Equations I, section
/// II.5 (from memory).
pub fn accumulate<const N: usize>(
    rates: impl Fn(f64) -> [f64; N],
    places: &[f64],
) -> Option<Vec<[f64; N]>> {
    let rates = Rates(rates);
    let mut sums = vec![[0.0; N]];
    for ends in places.windows(2) {
        let (from, to) = (ends[0], ends[1]);
        let before = sums.last().copied()?;
        let solved = IVP::ode(&rates, from, to, before)
            .method(ExplicitRungeKutta::dop853().rtol(1e-9).atol(1e-12))
            .solve();
        let sum = match solved {
            Ok(solution) => solution.y.last().copied()?,
            // The solver may stop a rounding error short of the end, with no step left to take.
            Err(Error::StepSize { t, y }) if to - t <= 1e-9 * to.abs() => y,
            Err(_) => return None,
        };
        sums.push(sum);
    }
    Some(sums)
}
