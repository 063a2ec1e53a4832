package org.loamlight.physics;

import java.util.Collection;

/**
 * A bulb, seen as a point that shines straight down: E = S cos(a) cos(b) / r^2 with r the distance, a the angle between
 * the ray and straight down at the lamp, b that between the ray and straight up at the place; both are the same angle,
 * so E = S h^2 / r^4 for a place h below the lamp. S is the index 1 m straight below (index m2).
 *
 * <p>The cosine at the lamp is Lambert's law for a flat diffuse face that looks down, half way between a bare
 * bulb, which shines as much aside as down, and a reflector bulb with a narrow beam. A judgement: lamps of
 * both kinds exist and nobody states which one hangs there. The cosine at the place is the receiver of {@link UvSource}. The
 * square is the inverse square law (worked example: Health Physics Society, answer 11543).
 *
 * @param middle where the bulb is
 */
public record PointSource(Point middle) implements UvSource {

    @Override
    public PointSource atHeight(double metres) {
        return new PointSource(middle.atHeight(metres));
    }

    @Override
    public double share(Point place, Collection<Box> boxes) {
        double below = middle.z() - place.z();
        if (below <= 0 || isBlocked(place, boxes)) {
            return 0;
        }
        double distance = middle.distanceTo(place);
        double cosine = below / distance;
        return cosine * cosine * shareStraightBelow(distance);
    }

    private boolean isBlocked(Point place, Collection<Box> boxes) {
        for (Box box : boxes) {
            if (box.blocks(place, middle)) {
                return true;
            }
        }
        return false;
    }

    @Override
    public double shareStraightBelow(double distanceMetres) {
        return LightField.pointScale(1, StrictMath.max(NEAREST_METRES, Argument.positive("distanceMetres", distanceMetres)));
    }
}
