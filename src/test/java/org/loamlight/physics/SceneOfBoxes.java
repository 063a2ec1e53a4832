package org.loamlight.physics;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Furnishings of an enclosure of 1.2 m x 0.6 m x 0.6 m, thrown together by a seeded random. */
record SceneOfBoxes(List<Box> boxes) {

    static SceneOfBoxes random(Random random, int count) {
        List<Box> boxes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Point low = new Point(1.1 * random.nextDouble(), 0.5 * random.nextDouble(), 0.4 * random.nextDouble());
            boxes.add(new Box(low, new Point(low.x() + 0.02 + 0.3 * random.nextDouble(),
                    low.y() + 0.02 + 0.3 * random.nextDouble(), low.z() + 0.01 + 0.15 * random.nextDouble())));
        }
        return new SceneOfBoxes(boxes);
    }

    /** A place below all lamps. */
    static Point place(Random random) {
        return new Point(1.2 * random.nextDouble(), 0.6 * random.nextDouble(), 0.4 * random.nextDouble());
    }

    /** A tube below the ceiling, lying either way. */
    static LineSource tube(Random random) {
        LineSource.Run run = random.nextBoolean() ? LineSource.Run.LENGTH : LineSource.Run.DEPTH;
        Point middle = new Point(1.2 * random.nextDouble(), 0.6 * random.nextDouble(), 0.45 + 0.15 * random.nextDouble());
        return new LineSource(middle, 0.1 + random.nextDouble(), run);
    }

    /** The same seen in a mirror at the plane x = 0.6 m. */
    SceneOfBoxes mirrored() {
        return new SceneOfBoxes(boxes.stream().map(box -> new Box(
                new Point(1.2 - box.high().x(), box.low().y(), box.low().z()),
                new Point(1.2 - box.low().x(), box.high().y(), box.high().z()))).toList());
    }

    static Point mirrored(Point point) {
        return new Point(1.2 - point.x(), point.y(), point.z());
    }

    static UvSource mirrored(UvSource source) {
        if (source instanceof LineSource tube) {
            return new LineSource(mirrored(tube.middle()), tube.arcLengthMetres(), tube.run());
        }
        return new PointSource(mirrored(source.middle()));
    }
}
