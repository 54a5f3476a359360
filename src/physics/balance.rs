//! Axle loads, tipping and nosing over.
