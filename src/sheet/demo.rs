//! The builds that come with the program: invented machines of the Tern Point repair shed.

/// A build that comes with the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Demo {
    /// Its file name without ending, also its name on the command line.
    pub id: &'static str,
    /// The text of its file.
    pub text: &'static str,
}

/// Every build that comes with the program.
pub const ALL: [Demo; 4] = [
    Demo { id: "sandpiper", text: include_str!("../../assets/builds/sandpiper.toml") },
    Demo { id: "bullock", text: include_str!("../../assets/builds/bullock.toml") },
    Demo { id: "peat-barrow", text: include_str!("../../assets/builds/peat-barrow.toml") },
    Demo { id: "dune-cart", text: include_str!("../../assets/builds/dune-cart.toml") },
];

/// The build of that name.
pub fn find(id: &str) -> Option<Demo> {
    ALL.into_iter().find(|demo| demo.id == id)
}
