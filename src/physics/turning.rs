//! What it takes to swing the machine round.
