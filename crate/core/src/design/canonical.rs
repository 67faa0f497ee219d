//! The one way a design is written: every key, in the document's order, numbers as short as they read back the same.

use super::making::{Factors, Fit, JointSizes, Material, Printer, Reading, ServicePrices};
use super::model::{
    Coil, Coordinate, Design, Dress, Elbow, Ends, Fitting, KeepOut, KeepOutShape, Port, Run, Seal, Stance, Station,
};
use super::parse::{FORMAT, VERSION};
use super::working::{Coolant, LeakReadings, Loop, LoopPart, PumpStated};
use super::writer::Writer;
use crate::presets;

/// The design's canonical text, with a line feed at its end. Parsing it gives the same design; writing that gives the
/// same text.
pub fn canonical(design: &Design) -> String {
    let mut w = Writer::new();
    w.object(|w| {
        w.text("format", FORMAT);
        w.number("version", f64::from(VERSION));
        w.text("name", &design.name);
        w.text("notes", &design.notes);
        w.list("fittings", &design.fittings, fitting);
        w.list("ports", &design.ports, port);
        w.list("runs", &design.runs, run);
        w.list("keep_outs", &design.keep_outs, keep_out);
        w.number("clearance", design.clearance);
        w.key("process").object(|w| {
            material(w.key("material"), &design.process.material);
            printer(w.key("printer"), &design.process.printer);
            factors(w.key("factors"), &design.process.factors);
            match &design.process.fit {
                Some(readings) => fit(w.key("fit"), readings),
                None => w.null("fit"),
            }
            joint(w.key("joint"), &design.process.joint);
            match &design.process.service {
                Some(prices) => service(w.key("service"), prices),
                None => w.null("service"),
            }
        });
        working(w.key("loop"), &design.working);
    });
    w.finish()
}

fn fitting(w: &mut Writer, fitting: &Fitting) {
    w.object(|w| {
        w.text("name", &fitting.name);
        w.number("tube_diameter", fitting.tube_diameter);
        w.number("height", fitting.height);
        w.number("socket_depth", fitting.socket_depth);
        w.number("collar_diameter", fitting.collar_diameter);
        w.number("lead", fitting.lead);
        w.known("bore", fitting.bore);
        match &fitting.elbow {
            Some(turn) => elbow(w.key("elbow"), turn),
            None => w.null("elbow"),
        }
        match &fitting.seal {
            Some(ring) => seal(w.key("seal"), ring),
            None => w.null("seal"),
        }
    });
}

fn elbow(w: &mut Writer, elbow: &Elbow) {
    w.object(|w| {
        w.number("angle_deg", elbow.angle_deg);
        w.number("rise", elbow.rise);
        w.number("reach", elbow.reach);
        w.number("turn_deg", elbow.turn_deg);
    });
}

fn seal(w: &mut Writer, seal: &Seal) {
    w.object(|w| {
        w.number("section", seal.section);
        w.number("gland_diameter", seal.gland_diameter);
        w.known("gland_width", seal.gland_width);
    });
}

fn port(w: &mut Writer, port: &Port) {
    w.object(|w| {
        w.text("name", &port.name);
        w.point("at", &port.at);
        w.point("facing", &port.facing);
        w.text("fitting", &port.fitting);
        w.number("measured_to", port.measured_to);
    });
}

fn run(w: &mut Writer, run: &Run) {
    w.object(|w| {
        w.text("name", &run.name);
        w.text("from", &run.from);
        w.text("to", &run.to);
        w.key("tube").object(|w| {
            w.number("outer_diameter", run.tube.outer_diameter);
            w.number("bore", run.tube.bore);
        });
        w.number("bend_radius", run.bend_radius);
        w.flag("fit_bends", run.fit_bends);
        w.list("route", &run.route, station);
        match &run.dress {
            Some(worn) => dress(w.key("dress"), worn),
            None => w.null("dress"),
        }
        ends(w.key("ends"), &run.ends);
        stance(w, run.stance.as_ref());
        w.list("cuts", &run.cuts, |w, cut| {
            w.object(|w| {
                w.number("at", cut.at);
                stance(w, cut.stance.as_ref());
            });
        });
    });
}

fn stance(w: &mut Writer, stance: Option<&Stance>) {
    match stance {
        Some(stance) => w.key("stance").object(|w| {
            w.point("up", &stance.up);
            w.number("turn_deg", stance.turn_deg);
        }),
        None => w.null("stance"),
    }
}

fn dress(w: &mut Writer, dress: &Dress) {
    w.object(|w| {
        // What follows the tube says nothing, so that it goes on following.
        if let Some(diameter) = dress.diameter {
            w.number("diameter", diameter);
        }
        if let Some(diameter) = dress.end_diameter {
            w.number("end_diameter", diameter);
        }
        w.number("blend", dress.blend);
        w.number("lobes", f64::from(dress.lobes));
        w.number("depth", dress.depth);
        w.number("twist_deg_per_mm", dress.twist_deg_per_mm);
    });
}

fn station(w: &mut Writer, station: &Station) {
    w.object(|w| match station {
        Station::Corner(corner) => {
            coordinates(w.key("corner"), &corner.at);
            // A corner that takes the run's radius says nothing, so that it follows when the run's changes.
            if let Some(radius) = corner.bend_radius {
                w.number("bend_radius", radius);
            }
        }
        Station::Through(through) => coordinates(w.key("through"), &through.at),
        Station::Coil(turns) => coil(w.key("coil"), turns),
    });
}

fn coordinates(w: &mut Writer, at: &[Coordinate; 3]) {
    w.row(at, |w, coordinate| match coordinate {
        Coordinate::Fixed(value) => w.bare_number(*value),
        Coordinate::Tied { of, plus } => w.inline_object(|w| {
            w.text("of", of);
            w.number("plus", *plus);
        }),
    });
}

fn coil(w: &mut Writer, coil: &Coil) {
    w.object(|w| {
        coordinates(w.key("centre"), &coil.centre);
        w.point("axis", &coil.axis);
        w.number("radius", coil.radius);
        if let Some(radius) = coil.end_radius {
            w.number("end_radius", radius);
        }
        w.number("pitch", coil.pitch);
        w.number("turns", coil.turns);
        w.text("hand", coil.hand.word());
        w.number("start_deg", coil.start_deg);
    });
}

fn ends(w: &mut Writer, ends: &Ends) {
    w.object(|w| {
        w.number("chamfer_deg", ends.chamfer_deg);
        w.number("chamfer_length", ends.chamfer_length);
        w.number("edge_break", ends.edge_break);
        w.number("trim", ends.trim);
        w.flag("seat_mark", ends.seat_mark);
    });
}

fn keep_out(w: &mut Writer, keep_out: &KeepOut) {
    w.object(|w| {
        w.text("name", &keep_out.name);
        match &keep_out.shape {
            KeepOutShape::Box { min, max } => w.key("box").object(|w| {
                w.point("min", min);
                w.point("max", max);
            }),
            KeepOutShape::Cylinder { from, to, radius } => w.key("cylinder").object(|w| {
                w.point("from", from);
                w.point("to", to);
                w.number("radius", *radius);
            }),
        }
    });
}

fn material(w: &mut Writer, material: &Material) {
    w.object(|w| {
        w.text("name", &material.name);
        match material.way {
            Some(way) => w.text("way", way.word()),
            None => w.null("way"),
        }
        w.number("density_g_per_cm3", material.density_g_per_cm3);
        w.known("glass_c", material.glass_c);
        w.flag("semicrystalline", material.semicrystalline);
        w.known("hdt_045_c", material.hdt_045_c);
        w.known("hdt_180_c", material.hdt_180_c);
        w.known("strength_mpa", material.strength_mpa);
        w.known("modulus_mpa", material.modulus_mpa);
        w.known("elongation_percent", material.elongation_percent);
        w.known("expansion_um_per_m_k", material.expansion_um_per_m_k);
        w.known("water_uptake_percent", material.water_uptake_percent);
        w.known("across_layers", material.across_layers);
        w.known("tight_from_mm", material.tight_from_mm);
        w.known("roughness_um", material.roughness_um);
        w.known("price_per_l", material.price_per_l);
        look(w, material);
        w.text("cautions", &material.cautions);
        w.text("source", &material.source);
    });
}

fn look(w: &mut Writer, material: &Material) {
    match material.look {
        Some(look) => w.key("look").inline_object(|w| {
            w.text("clarity", look.clarity.word());
            w.text("colour", &look.colour_word());
        }),
        // Nothing is said of nothing, but where the material's name alone would say something.
        None if presets::look_of(&material.name).is_some() => w.null("look"),
        None => {}
    }
}

fn factors(w: &mut Writer, factors: &Factors) {
    w.object(|w| {
        w.number("warm", factors.warm);
        w.number("lasting", factors.lasting);
        w.number("safety", factors.safety);
    });
}

fn joint(w: &mut Writer, joint: &JointSizes) {
    w.object(|w| {
        w.number("length", joint.length);
        w.number("clearance", joint.clearance);
        w.number("wall", joint.wall);
        w.number("key_depth", joint.key_depth);
        w.number("bond_mpa", joint.bond_mpa);
    });
}

fn service(w: &mut Writer, service: &ServicePrices) {
    w.object(|w| {
        w.known("price_per_cm3", service.price_per_cm3);
        w.number("setup", service.setup);
        w.number("minimum", service.minimum);
        w.text("source", &service.source);
    });
}

fn fit(w: &mut Writer, fit: &Fit) {
    w.object(|w| {
        w.text("material", &fit.material);
        w.text("printer", &fit.printer);
        w.list("outer", &fit.outer, reading);
        w.list("bore", &fit.bore, reading);
        w.list("length", &fit.length, reading);
        match &fit.fitted {
            Some(fitted) => w.key("fitted").object(|w| {
                w.number("outer_diameter", fitted.outer_diameter);
                w.known("measured", fitted.measured);
            }),
            None => w.null("fitted"),
        }
    });
}

fn reading(w: &mut Writer, reading: &Reading) {
    w.object(|w| {
        w.number("nominal", reading.nominal);
        w.known("measured", reading.measured);
    });
}

fn printer(w: &mut Writer, printer: &Printer) {
    w.object(|w| {
        w.text("name", &printer.name);
        w.point("build_volume", &printer.build_volume);
        w.number("least_wall", printer.least_wall);
        w.known("tolerance", printer.tolerance);
        w.number("margin", printer.margin);
        w.known("layer_mm", printer.layer_mm);
        w.known("spot_mm", printer.spot_mm);
        w.known("overhang_deg", printer.overhang_deg);
        w.known("bore_deg", printer.bore_deg);
        w.known("bridge_mm", printer.bridge_mm);
        w.known("seconds_per_layer", printer.seconds_per_layer);
        w.known("most_triangles", printer.most_triangles);
        w.known("most_mb", printer.most_mb);
        w.text("source", &printer.source);
    });
}

fn coolant(w: &mut Writer, coolant: &Coolant) {
    w.object(|w| {
        w.text("name", &coolant.name);
        w.number("density_g_per_cm3", coolant.density_g_per_cm3);
        match coolant.base {
            Some(base) => w.text("base", base.word()),
            None => w.null("base"),
        }
        w.number("glycol_percent", coolant.glycol_percent);
        w.known("viscosity_mpa_s", coolant.viscosity_mpa_s);
        w.text("source", &coolant.source);
    });
}

fn working(w: &mut Writer, working: &Loop) {
    w.object(|w| {
        w.number("flow_l_per_h", working.flow_l_per_h);
        coolant(w.key("coolant"), &working.coolant);
        w.number("cold_c", working.cold_c);
        w.number("working_c", working.working_c);
        w.number("fault_c", working.fault_c);
        w.number("pressure_kpa", working.pressure_kpa);
        w.number("test_kpa", working.test_kpa);
        w.point("up", &working.up);
        w.number("heat_w", working.heat_w);
        pump(w.key("pump"), &working.pump);
        w.list("parts", &working.parts, part);
        match &working.leak_test {
            Some(readings) => leak_test(w.key("leak_test"), readings),
            None => w.null("leak_test"),
        }
    });
}

fn pump(w: &mut Writer, pump: &PumpStated) {
    w.object(|w| {
        w.text("name", &pump.name);
        w.list("points", &pump.points, |w, point| {
            w.object(|w| {
                w.number("flow_l_per_h", point.flow_l_per_h);
                w.number("head_m", point.head_m);
            });
        });
        w.text("source", &pump.source);
    });
}

fn leak_test(w: &mut Writer, readings: &LeakReadings) {
    w.object(|w| {
        w.known("volume_ml", readings.volume_ml);
        w.number("start_kpa", readings.start_kpa);
        w.known("end_kpa", readings.end_kpa);
        w.number("start_c", readings.start_c);
        w.number("end_c", readings.end_c);
        w.number("minutes", readings.minutes);
        w.number("air_kpa", readings.air_kpa);
        w.number("limit_kpa", readings.limit_kpa);
        w.number("limit_minutes", readings.limit_minutes);
    });
}

fn part(w: &mut Writer, part: &LoopPart) {
    w.object(|w| {
        w.text("name", &part.name);
        w.number("drop_kpa", part.drop_kpa);
        w.number("at_l_per_h", part.at_l_per_h);
        w.number("volume_ml", part.volume_ml);
    });
}
