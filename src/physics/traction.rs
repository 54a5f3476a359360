//! How soft ground carries, drags and grips.
