//! Force, power, speed and stopping.
