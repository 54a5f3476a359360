//! Cutting a line into dashes, the same for every backend.

/// The dashes of a line: the pattern is lengths on, off, on, off, and so on.
///
/// A pattern without a positive length gives the whole line.
pub(in crate::plot) fn dashes(points: &[(f32, f32)], pattern: &[f32]) -> Vec<Vec<(f32, f32)>> {
    let around: f32 = pattern.iter().sum();
    if pattern.iter().any(|length| !length.is_finite() || *length <= 0.0) || around <= 0.0 {
        return vec![points.to_vec()];
    }
    let mut lengths = pattern.iter().copied().cycle();
    let mut left = lengths.next().unwrap_or(around);
    let mut on = true;
    let mut out: Vec<Vec<(f32, f32)>> = points.first().map(|p| vec![*p]).into_iter().collect();
    for pair in points.windows(2) {
        let (a, b) = (pair[0], pair[1]);
        let whole = (b.0 - a.0).hypot(b.1 - a.1);
        if !whole.is_finite() || whole <= 0.0 {
            continue;
        }
        let mut gone = 0.0;
        while whole - gone > left {
            gone += left;
            let part = gone / whole;
            let here = (a.0 + (b.0 - a.0) * part, a.1 + (b.1 - a.1) * part);
            match out.last_mut() {
                Some(dash) if on => dash.push(here),
                _ => out.push(vec![here]),
            }
            on = !on;
            left = lengths.next().unwrap_or(around);
        }
        left -= whole - gone;
        if let Some(dash) = out.last_mut().filter(|_| on) {
            dash.push(b);
        }
    }
    out.retain(|dash| dash.len() > 1);
    out
}

#[cfg(test)]
mod tests {
    use super::dashes;

    #[test]
    fn dashes_keep_the_pattern_round_corners() {
        let line = [(0.0, 0.0), (6.0, 0.0), (6.0, 6.0)];
        let cut = dashes(&line, &[4.0, 1.0]);
        let length = |dash: &Vec<(f32, f32)>| -> f32 {
            dash.windows(2).map(|w| (w[1].0 - w[0].0).hypot(w[1].1 - w[0].1)).sum()
        };
        let lengths: Vec<f32> = cut.iter().map(length).collect();
        assert_eq!(lengths, [4.0, 4.0, 2.0]);
        assert_eq!(cut[1], [(5.0, 0.0), (6.0, 0.0), (6.0, 3.0)]);
        assert_eq!(cut[2], [(6.0, 4.0), (6.0, 6.0)]);
    }
}
