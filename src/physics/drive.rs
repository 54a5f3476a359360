//! Motor, engine, gears and what they give at the ground.
