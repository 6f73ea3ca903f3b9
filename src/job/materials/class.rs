//! Classes of materials that are drilled, tapped and milled alike.

use super::Group;
use crate::lang;

/// What gives the speeds and feeds of drills, taps and cutters.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// Steels with sulphur or lead.
    FreeCutting,
    /// Structural and case-hardening steels, annealed or drawn.
    Structural,
    /// Unalloyed steels from about 0.35 % carbon.
    Carbon,
    /// Alloyed steels, most of them quenched and tempered.
    Alloy,
    /// Tool steels.
    Tool,
    /// Stainless steels with sulphur.
    FreeStainless,
    /// Ferritic and martensitic stainless steels.
    Ferritic,
    /// Austenitic stainless steels.
    Austenitic,
    /// Duplex and precipitation-hardening stainless steels.
    Duplex,
    /// Heat-resistant alloys of iron.
    HeatResistant,
    /// Pure titanium.
    PureTitanium,
    /// Titanium alloys.
    TitaniumAlloy,
    /// Cobalt-chromium alloys.
    CobaltChromium,
    /// Nickel alloys.
    Nickel,
    /// Copper alloys with lead, tellurium or sulphur: short chips.
    Brass,
    /// Copper and copper alloys with long chips.
    Copper,
    /// Aluminium alloys.
    Aluminium,
    /// Plastics.
    Plastic,
}

/// The classes with their keys in a job.
pub const CLASSES: [(&str, Class); 18] = [
    ("free_cutting_steel", Class::FreeCutting),
    ("structural_steel", Class::Structural),
    ("carbon_steel", Class::Carbon),
    ("alloy_steel", Class::Alloy),
    ("tool_steel", Class::Tool),
    ("free_cutting_stainless", Class::FreeStainless),
    ("ferritic_stainless", Class::Ferritic),
    ("austenitic_stainless", Class::Austenitic),
    ("duplex_stainless", Class::Duplex),
    ("heat_resistant_steel", Class::HeatResistant),
    ("pure_titanium", Class::PureTitanium),
    ("titanium_alloy", Class::TitaniumAlloy),
    ("cobalt_chromium", Class::CobaltChromium),
    ("nickel_alloy", Class::Nickel),
    ("free_cutting_copper", Class::Brass),
    ("copper_alloy", Class::Copper),
    ("aluminium", Class::Aluminium),
    ("plastic", Class::Plastic),
];

impl Class {
    /// Its key in a job.
    pub fn key(self) -> &'static str {
        CLASSES.iter().find(|(_, class)| *class == self).map_or("", |(key, _)| key)
    }

    /// What belongs to it, in words.
    pub fn words(self) -> &'static str {
        match self {
            Class::FreeCutting => lang::text("class-free-cutting-steel"),
            Class::Structural => lang::text("class-structural-steel"),
            Class::Carbon => lang::text("class-carbon-steel"),
            Class::Alloy => lang::text("class-alloy-steel"),
            Class::Tool => lang::text("class-tool-steel"),
            Class::FreeStainless => lang::text("class-free-cutting-stainless"),
            Class::Ferritic => lang::text("class-ferritic-stainless"),
            Class::Austenitic => lang::text("class-austenitic-stainless"),
            Class::Duplex => lang::text("class-duplex-stainless"),
            Class::HeatResistant => lang::text("class-heat-resistant-steel"),
            Class::PureTitanium => lang::text("class-pure-titanium"),
            Class::TitaniumAlloy => lang::text("class-titanium-alloy"),
            Class::CobaltChromium => lang::text("class-cobalt-chromium"),
            Class::Nickel => lang::text("class-nickel-alloy"),
            Class::Brass => lang::text("class-free-cutting-copper"),
            Class::Copper => lang::text("class-copper-alloy"),
            Class::Aluminium => lang::text("class-aluminium"),
            Class::Plastic => lang::text("class-plastic"),
        }
    }

    /// The family.
    pub fn group(self) -> Group {
        match self {
            Class::FreeCutting | Class::Structural | Class::Carbon | Class::Alloy => Group::Steel,
            Class::Tool => Group::ToolSteel,
            Class::FreeStainless | Class::Ferritic | Class::Austenitic | Class::Duplex | Class::HeatResistant => {
                Group::StainlessSteel
            }
            Class::PureTitanium | Class::TitaniumAlloy => Group::Titanium,
            Class::CobaltChromium => Group::CobaltChromium,
            Class::Nickel => Group::Nickel,
            Class::Brass | Class::Copper => Group::Copper,
            Class::Aluminium => Group::Aluminium,
            Class::Plastic => Group::Plastic,
        }
    }

    /// The class of a material whose owner gives only numbers: by modulus and density the family, among steels by kc1.1. Where
    /// classes are alike in these numbers, the slower of the common ones. Bounds between the rows of the table; common practice, no source.
    pub fn assumed(e_gpa: f64, density_kg_per_m3: f64, kc11_n_per_mm2: f64) -> Class {
        match (e_gpa, density_kg_per_m3, kc11_n_per_mm2) {
            (..30.0, ..) => Class::Plastic,
            (_, ..3500.0, _) => Class::Aluminium,
            (_, ..6000.0, _) => Class::TitaniumAlloy,
            (..150.0, ..) => Class::Copper,
            (_, 8050.0.., _) | (_, _, 2700.0..) => Class::Nickel,
            (_, _, ..1600.0) => Class::FreeCutting,
            (_, _, ..1850.0) => Class::Structural,
            // Stainless and alloyed steels have the same kc1.1.
            _ => Class::Austenitic,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::rows;
    use super::*;

    #[test]
    fn every_class_has_rows_and_its_own_key() {
        for (key, class) in CLASSES {
            assert!(rows().any(|row| row.class == class), "{key}");
            assert_eq!(class.key(), key);
        }
        assert_eq!(CLASSES.map(|(key, _)| key), crate::fields::MATERIAL_CLASSES);
    }

    /// Numbers alone hardly ever give a drill that runs faster than in the class of the table.
    #[test]
    fn numbers_alone_are_on_the_slow_side() {
        let mut faster = Vec::new();
        for row in rows() {
            let assumed = Class::assumed(row.e_gpa, row.density_kg_per_m3, row.kc11_n_per_mm2);
            if assumed.speeds().drill_m_per_min > row.class.speeds().drill_m_per_min {
                faster.push(row.name);
            }
        }
        // Soft tool and bearing steels have the kc1.1 of structural steel; duplex and precipitation-hardening steels are rows of the
        // austenitic ones.
        let soft = ["100Cr6", "C105U", "115CrV3", "90MnCrV8", "100MnCrW4"];
        let stainless = ["X2CrNiMoN22-5-3", "X2CrNiMoN25-7-4", "X5CrNiCuNb16-4", "X5CrNiCu15-5", "X7CrNiAl17-7"];
        assert_eq!(faster, [soft, stainless].concat());
    }
}
