//! Formulas as one line of plain text.

/// A rule's TeX as plain text; `quantity` says what stands for each `\q{id}`.
pub fn plain(tex: &str, quantity: &dyn Fn(&str) -> String) -> String {
    let mut reader = Reader { rest: tex, quantity };
    let text = reader.until_end();
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    text.replace("( ", "(").replace(" )", ")").replace(" ;", ";")
}

struct Reader<'a> {
    rest: &'a str,
    quantity: &'a dyn Fn(&str) -> String,
}

impl<'a> Reader<'a> {
    fn until_end(&mut self) -> String {
        let mut text = String::new();
        loop {
            let is_quantity = self.rest.starts_with(r"\q");
            let Some(piece) = self.piece() else { return text };
            // TeX writes 2x for a product; with a number put in for x that would be one number.
            if is_quantity && text.trim_end().ends_with(char::is_numeric) {
                text.push_str(" · ");
            }
            text.push_str(&piece);
        }
    }

    fn next(&mut self) -> Option<char> {
        let first = self.rest.chars().next()?;
        self.rest = &self.rest[first.len_utf8()..];
        Some(first)
    }

    /// The next sign, command or group.
    fn piece(&mut self) -> Option<String> {
        Some(match self.next()? {
            '\\' => self.command(),
            '{' => {
                let group = self.group_after_brace();
                self.inner(group)
            }
            '^' => {
                let power = self.argument();
                raised(&power)
            }
            '_' => format!("_{}", self.argument()),
            '~' | '&' => " ".to_owned(),
            sign => sign.to_string(),
        })
    }

    fn inner(&self, tex: &'a str) -> String {
        Reader { rest: tex, quantity: self.quantity }.until_end()
    }

    /// What stands up to the brace that closes the one just read.
    fn group_after_brace(&mut self) -> &'a str {
        let mut depth = 1_usize;
        for (at, sign) in self.rest.char_indices() {
            match sign {
                '{' => depth += 1,
                '}' => depth -= 1,
                _ => {}
            }
            if depth == 0 {
                let (group, after) = self.rest.split_at(at);
                self.rest = &after[1..];
                return group;
            }
        }
        std::mem::take(&mut self.rest)
    }

    /// The argument of a command as TeX: a group, a bare command or one sign.
    fn raw_argument(&mut self) -> &'a str {
        self.rest = self.rest.trim_start();
        if let Some(rest) = self.rest.strip_prefix('{') {
            self.rest = rest;
            return self.group_after_brace();
        }
        let length = match self.rest.strip_prefix('\\') {
            Some(name) => 1 + letters(name).max(name.chars().next().map_or(0, char::len_utf8)),
            None => self.rest.chars().next().map_or(0, char::len_utf8),
        };
        let (sign, after) = self.rest.split_at(length);
        self.rest = after;
        sign
    }

    fn argument(&mut self) -> String {
        let tex = self.raw_argument();
        self.inner(tex).trim().to_owned()
    }

    fn command(&mut self) -> String {
        let length = letters(self.rest);
        if length == 0 {
            // A lone sign after the backslash: a space of some width, or the sign itself.
            return match self.next() {
                Some('\\') => "; ".to_owned(),
                Some(',' | ';' | ':' | '!' | ' ') | None => " ".to_owned(),
                Some(sign) => sign.to_string(),
            };
        }
        let (name, after) = self.rest.split_at(length);
        self.rest = after;
        match name {
            "q" => {
                let text = (self.quantity)(self.raw_argument());
                if self.rest.starts_with('^') { whole(&text) } else { text }
            }
            "frac" | "dfrac" | "tfrac" => {
                let (above, below) = (self.argument(), self.argument());
                small_fraction(&above, &below)
                    .map_or_else(|| format!("{} / {}", whole(&above), whole(&below)), str::to_owned)
            }
            "sqrt" => format!("√({})", self.argument()),
            "begin" | "end" => {
                self.raw_argument();
                if name == "begin" { " { " } else { " } " }.to_owned()
            }
            "mathrm" | "text" | "mathit" | "operatorname" | "mathbf" => self.argument(),
            "left" | "right" | "big" | "Big" | "bigl" | "bigr" => String::new(),
            "cdot" => " · ".to_owned(),
            "times" => " × ".to_owned(),
            "le" | "leq" => " ≤ ".to_owned(),
            "ge" | "geq" => " ≥ ".to_owned(),
            "approx" => " ≈ ".to_owned(),
            "pm" => " ± ".to_owned(),
            "circ" => "°".to_owned(),
            "int" => "∫".to_owned(),
            "quad" | "qquad" => "  ".to_owned(),
            other => greek(other).map_or_else(|| format!(" {other} "), str::to_owned),
        }
    }
}

/// How many letters `text` starts with.
fn letters(text: &str) -> usize {
    text.find(|c: char| !c.is_ascii_alphabetic()).unwrap_or(text.len())
}

fn small_fraction(above: &str, below: &str) -> Option<&'static str> {
    Some(match (above, below) {
        ("1", "2") => "½ ",
        ("1", "3") => "⅓ ",
        ("2", "3") => "⅔ ",
        ("1", "4") => "¼ ",
        ("1", "6") => "⅙ ",
        _ => return None,
    })
}

/// In brackets unless it is one piece already.
fn whole(text: &str) -> String {
    let one_piece = !text.contains([' ', '+', '/']) || is_bracketed(text);
    if one_piece { text.to_owned() } else { format!("({text})") }
}

/// Whether the first bracket closes at the very end.
fn is_bracketed(text: &str) -> bool {
    let mut depth = 0_i32;
    for (at, sign) in text.char_indices() {
        match sign {
            '(' => depth += 1,
            ')' => depth -= 1,
            _ => {}
        }
        if depth == 0 {
            return at > 0 && at + 1 == text.len();
        }
    }
    false
}

fn raised(power: &str) -> String {
    match power {
        "2" => "²".to_owned(),
        "3" => "³".to_owned(),
        "4" => "⁴".to_owned(),
        "°" => "°".to_owned(),
        other => format!("^{}", whole(other)),
    }
}

fn greek(name: &str) -> Option<&'static str> {
    Some(match name {
        "alpha" => "α",
        "beta" => "β",
        "delta" => "δ",
        "Delta" => "Δ",
        "eta" => "η",
        "gamma" => "γ",
        "theta" => "θ",
        "lambda" => "λ",
        "mu" => "µ",
        "pi" => "π",
        "rho" => "ρ",
        "sigma" => "σ",
        "tau" => "τ",
        "varphi" | "phi" => "φ",
        "omega" => "ω",
        "Omega" => "Ω",
        "psi" => "ψ",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::plain;

    #[test]
    fn tex_reads_as_one_line() {
        for (tex, text) in [
            (r"\q{weight} = \q{mass} \cdot \q{gravity}", "weight = mass · gravity"),
            (r"\q{n} = \q{w} \cdot \cos \q{slope}", "n = w · cos slope"),
            (r"\q{p} = \frac{\q{f}}{\q{n} \cdot \q{b}}", "p = f / (n · b)"),
            (r"\frac{a + b}{2}", "(a + b) / 2"),
            (r"\frac{(a + b)}{(c)(d + e)}", "(a + b) / ((c)(d + e))"),
            (r"\sqrt{2 \, \q{g} \cdot \q{h}}", "√(2 · g · h)"),
            (r"\frac{1}{2} m v^2", "½ m v²"),
            (r"2 \q{x}", "2 · x"),
            (r"\tfrac16 \q{L}", "⅙ · L"),
            (
                r"\begin{cases} 0 & \text{if } \q{n} = 0 \\ \q{a} & \text{else} \end{cases}",
                "{ 0 if n = 0; a else }",
            ),
            (r"v^{n+1}", "v^(n+1)"),
            (r"F_{\mathrm{peak}}", "F_peak"),
            (r"\left( 1 + \frac{6 e}{L} \right)", "(1 + (6 e) / L)"),
            (r"80^\circ", "80°"),
            (r"\int_0^v \dfrac{dv}{a}", "∫_0^v dv / a"),
        ] {
            assert_eq!(plain(tex, &str::to_owned), text, "{tex}");
        }
    }

    #[test]
    fn a_power_takes_the_number_with_its_unit() {
        let text = plain(r"\q{m} \cdot \q{v}^2", &|id| format!("3 {id}"));
        assert_eq!(text, "3 m · (3 v)²");
    }

    #[test]
    fn broken_tex_is_no_panic() {
        for tex in [r"\", r"\frac{", r"\frac", r"^", r"{", r"}", r"\q", r"\q{", r"_é", r"\é"] {
            let _ = plain(tex, &str::to_owned);
        }
    }
}
