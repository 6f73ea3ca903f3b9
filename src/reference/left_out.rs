//! What holds where a key is left out, if neither its default nor the schema says it.

use crate::fields::ENGRAVING_DEPTH_MM;
use crate::fields::TRAY_BY_DEFAULT_MM;
use crate::fields::{STIFFNESS_PER_MM, WHIP_PER_MM};
use crate::say;

/// The words for a key by its path in the table of fields. `default`: its default, empty if it has none.
pub(super) fn words(path: &str, default: &str) -> Option<String> {
    Some(match path {
        "shaft.name" => say!("left-out-shaft-name"),
        "shaft.drawing"
        | "shaft.revision"
        | "shaft.date"
        | "shaft.features"
        | "shaft.back_work"
        | "stock.tolerance"
        | "stock.kind"
        | "limits.free_ratio"
        | "wishes"
        | "wishes.hand_over_at"
        | "wishes.never_grip"
        | "vary.length"
        | "vary.diameter" => say!("left-out-none"),
        "shaft.sections.name" => say!("left-out-section-name"),
        "shaft.sections.kind" => say!("left-out-section-kind"),
        "shaft.sections.sides" => say!("left-out-section-sides"),
        "shaft.sections.ra" => say!("left-out-section-ra"),
        "shaft.sections.chamfer"
        | "shaft.sections.radius"
        | "shaft.sections.chamfer.front"
        | "shaft.sections.chamfer.rear"
        | "shaft.sections.radius.front"
        | "shaft.sections.radius.rear" => say!("left-out-edge"),
        "shaft.sections.grind" => say!("left-out-grind"),
        "shaft.sections.turned_tolerance" => "`h9`".to_owned(),
        "shaft.sections.turned_ra" => say!("left-out-none"),
        "shaft.sections.run_out" | "machine.counter_spindle.collets.run_out" => say!("left-out-run-out"),
        "shaft.sections.tolerance" => say!("left-out-section-tolerance"),
        "shaft.sections.interrupt" => say!("left-out-section-interrupt"),
        "shaft.sections.thread_by" => say!("left-out-thread-by"),
        "shaft.sections.grip" => say!("left-out-section-grip"),
        "shaft.features.thrust" => say!("left-out-feature-thrust"),
        "shaft.features.at" => say!("left-out-feature-at"),
        "shaft.features.depth" => say!("left-out-feature-depth", default = ENGRAVING_DEPTH_MM.to_string()),
        "shaft.features.drill_depth" => say!("left-out-feature-drill-depth"),
        "shaft.features.end" => "`front`".to_owned(),
        "shaft.features.forming" => "`shave`".to_owned(),
        "shaft.material.vc" => say!("left-out-material-vc"),
        "shaft.material.class" => say!("left-out-material-class"),
        "cutting" | "limits" | "planning" | "scatter" | "change_prices" | "machine.part_off" | "readings.errors" => {
            say!("left-out-defaults")
        }
        "cutting.tools" => "`single`".to_owned(),
        "cutting.finisher" => say!("left-out-finisher"),
        "cutting.finisher.side" => "`same`".to_owned(),
        "cutting.finisher.nose_radius" | "cutting.finisher.approach_angle" => say!("left-out-finisher-edge"),
        "cutting.vc" => say!("left-out-cutting-vc"),
        "cutting.feed" => say!("left-out-cutting-feed"),
        "cutting.ap_finish" => say!("left-out-cutting-ap-finish", default = default),
        "limits.stiffness_min" => say!("left-out-stiffness", share = STIFFNESS_PER_MM.to_string()),
        "limits.span_stiffness_min" => say!("left-out-span-stiffness"),
        "limits.whip" => say!("left-out-whip", share = WHIP_PER_MM.to_string()),
        "holding" | "readings.set_ups.holding" => "`bush`".to_owned(),
        "hold" => "`collet`".to_owned(),
        "objective" => "`time`".to_owned(),
        "rates" => say!("left-out-rates"),
        "rates.currency" => "`EUR`".to_owned(),
        "order" => say!("left-out-order"),
        "vary" => say!("left-out-vary"),
        "wishes.hand_over_at.nose" => say!("left-out-wish-nose"),
        "wishes.at_most_hand_overs" => say!("left-out-wish-most"),
        "scatter.bar" => say!("left-out-scatter-bar"),
        "scatter.bush" | "scatter.headstock" | "scatter.counter_spindle" | "scatter.centre" | "scatter.sleeve" => {
            say!("left-out-scatter-support")
        }
        "confidence" => say!("left-out-confidence"),
        "machine.name" => say!("left-out-machine-name"),
        "machine.bush" => say!("left-out-bush"),
        "machine.no_bush" => say!("left-out-no-bush"),
        "machine.bush.kind" => say!("left-out-bush-kind"),
        "machine.bush.engagement_min" => say!("left-out-engagement"),
        "machine.bar_feed" => say!("left-out-bar-feed"),
        "machine.counter_spindle" => say!("left-out-counter-spindle"),
        "machine.counter_spindle.sleeve" => say!("left-out-sleeve"),
        "machine.counter_spindle.centre" => say!("left-out-centre"),
        "machine.counter_spindle.centre.stands_out" => say!("left-out-centre-stands-out"),
        "machine.counter_spindle.back_work" => "`in_line`".to_owned(),
        "machine.counter_spindle.torsional_stiffness" => say!("left-out-torsional-stiffness"),
        "machine.headstock.power"
        | "machine.headstock.torque"
        | "machine.headstock.feed_force"
        | "machine.counter_spindle.torque" => say!("left-out-drive"),
        "machine.headstock.clamp_force" => say!("left-out-clamp-force"),
        "machine.part_off.tray" => {
            let [length, diameter] = TRAY_BY_DEFAULT_MM.map(|mm| mm.to_string());
            say!("left-out-tray", length = length, diameter = diameter)
        }
        "machine.tools" => say!("left-out-tools"),
        "machine.tools.turret" => say!("left-out-turret"),
        "shaft.sections.finish_pass" | "machine.tools.opposed" | "machine.tools.tandem" => "`false`".to_owned(),
        "shop" | "machine" | "stock" | "stock.diameter" => say!("left-out-to-shop"),
        "shop.name" | "shop.machines" | "shop.collets" | "shop.materials" | "shop.bars" => say!("left-out-none"),
        "language" => say!("left-out-language"),
        "units" | "shop.units" | "readings.units" => "`mm`".to_owned(),
        "machine.units" => say!("left-out-machine-units"),
        "shop.language" => "`en`".to_owned(),
        "shop.machines.name" => say!("left-out-shop-machine-name"),
        "shop.machines.file" => say!("left-out-shop-machine-file"),
        "shop.machines.machine" => say!("left-out-shop-machine-here"),
        "shop.machines.per_hour" => say!("left-out-shop-per-hour"),
        "machine.counter_spindle.collets.machines" => say!("left-out-shop-collet"),
        "shop.materials.grade" => say!("left-out-shop-grade"),
        "shop.materials.e_gpa" | "shop.materials.density" | "shop.materials.kc11" | "shop.materials.mc" => {
            say!("left-out-shop-grade-value")
        }
        "shop.materials.poisson" => say!("left-out-shop-grade-or", default = default),
        "shop.materials.vc" | "shop.materials.class" => say!("left-out-shop-grade-maybe"),
        "shop.materials.name" => say!("left-out-shop-grade-name"),
        "machine.counter_spindle.collets" => say!("left-out-to-shop"),
        "shop.materials.price_per_kg" | "shop.bars.price_per_kg" => say!("left-out-shop-price"),
        "shop.bars.tolerance" | "shop.bars.kind" => say!("left-out-none"),
        "shop.confidence"
        | "shop.confidence_warn"
        | "shop.rates"
        | "shop.cutting"
        | "shop.limits"
        | "shop.planning"
        | "shop.scatter"
        | "shop.change_prices"
        | "shop.order"
        | "shop.holding"
        | "shop.objective" => say!("left-out-shop-house"),
        "tool_list" | "shop.tool_list" => say!("left-out-tool-list"),
        "tool_list.station" | "tool_list.insert" | "tool_list.materials" => say!("left-out-none"),
        "tool_list.nose_radius"
        | "tool_list.approach_angle"
        | "tool_list.ap_max"
        | "tool_list.vc"
        | "tool_list.feed"
        | "tool_list.rough.vc"
        | "tool_list.rough.feed"
        | "tool_list.finish.vc"
        | "tool_list.finish.feed" => {
            say!("left-out-tool-cutting")
        }
        "tool_list.width" => say!("left-out-tool-width"),
        "tool_list.rough" | "tool_list.finish" => say!("left-out-tool-cut"),
        "shop.bars.bar_length" => say!("left-out-shop-bar-length"),
        "readings.fit" => say!("left-out-fit"),
        "readings.set_ups.name" => say!("left-out-set-up-name"),
        "readings.set_ups.headstock" => say!("left-out-set-up-headstock"),
        "readings.set_ups.grip" => say!("left-out-set-up-grip"),
        "readings.set_ups.collet" => say!("left-out-set-up-collet"),
        "readings.set_ups.dial" => say!("left-out-dial"),
        "readings.set_ups.frequency" => say!("left-out-frequency"),
        "readings.set_ups.dial.read_at" => say!("left-out-read-at"),
        "machine.scatter" | "shaft.material.scatter" | "shop.materials.scatter" | "shop.bars.scatter" => {
            say!("left-out-own-scatter")
        }
        own if own.contains(".scatter.") && !own.starts_with("scatter") => say!("left-out-own-scatter"),
        _ => return None,
    })
}
