//! Range, the weight spiral and scaling.
