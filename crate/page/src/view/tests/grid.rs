//! The squared paper: known squares, round the whole scene, never more than can be drawn.

use tubewright_core::layout::Vec3;

use crate::view::camera::Ball;
use crate::view::grid::{Grid, Paper};

fn cube(side: f64, off: f64) -> Vec<Ball> {
    [0.0, side].map(|at| Ball { centre: Vec3::new(off + at, off + at, off + at), radius: 0.0 }).to_vec()
}

#[test]
fn squares_are_ten_millimetres_for_a_build() {
    for side in [90.0, 240.0, 650.0] {
        assert_eq!(Grid::of(&cube(side, 3.0)).shown_step(10.0), 10.0);
        assert_eq!(Grid::of(&cube(side, 3.0)).major(), 50.0);
    }
    assert_eq!(Grid::of(&cube(30.0, 0.0)).shown_step(10.0), 1.0);
    assert_eq!(Grid::of(&cube(2400.0, 0.0)).shown_step(10.0), 100.0);
    assert_eq!(Grid::of(&[]).shown_step(3.0), 10.0);
}

#[test]
fn squares_too_small_to_see_are_not_claimed() {
    let grid = Grid::of(&cube(200.0, 0.0));
    assert_eq!((grid.shown_step(0.41), grid.shown_step(0.39)), (10.0, 50.0));
    assert_eq!(grid.minor_strength(0.3), 0.0);
    assert_eq!(grid.minor_strength(5.0), 1.0);
}

#[test]
fn papers_hold_the_scene_in_whole_squares_and_few_lines() {
    for side in [1e-6, 0.5, 8.0, 79.9, 80.1, 333.0, 5e4, 2e6] {
        for off in [0.0, -1234.5, 98_765.4] {
            let balls = cube(side, off);
            let grid = Grid::of(&balls);
            let (low, high) = grid.corners();
            let hair = 1e-5 * grid.major();
            for ball in &balls {
                assert!(
                    (0..3).all(|axis| low[axis] <= ball.centre[axis] + hair && ball.centre[axis] <= high[axis] + hair)
                );
            }
            for paper in [Paper::Floor, Paper::AcrossX, Paper::AcrossY] {
                let lines = grid.lines(paper);
                assert!((4..500).contains(&lines.count()), "{side} at {off}: {} lines", lines.count());
            }
        }
    }
}

#[test]
fn axes_stand_on_the_datum_or_as_near_as_the_paper_goes() {
    assert_eq!(Grid::of(&cube(100.0, -20.0)).nearest_to_datum(), Vec3::zeros());
    let near = Grid::of(&cube(100.0, 1000.0)).nearest_to_datum();
    assert!(near.x <= 1000.0 && near.x > 900.0);
}
