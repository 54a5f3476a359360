//! Where losses go and how hot things get.
