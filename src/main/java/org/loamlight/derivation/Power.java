package org.loamlight.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loamlight.physics.Conformance;
import org.loamlight.physics.Electricity;
import org.loamlight.quantity.Method;
import org.loamlight.quantity.Origin;
import org.loamlight.quantity.Place;
import org.loamlight.quantity.Quantity;
import org.loamlight.quantity.Step;
import org.loamlight.quantity.Topic;
import org.loamlight.setup.Heater;
import org.loamlight.setup.Lamp;
import org.loamlight.setup.Measure;
import org.loamlight.setup.Setup;
import org.loamlight.setup.Stated;
import org.loamlight.setup.Subject;

/**
 * Watts, amperes, energy and cost of heaters and lamps together. Nothing is made before heaters and lamps are told, each with
 * its power, nor energy and cost before each has its hours: a sum of some of them would look like a sum of all.
 */
final class Power {
    private static final String ELECTRICAL = "electrical";
    private static final double WATTS_PER_KILOWATT = 1000;

    /**
     * One heater or lamp.
     *
     * @param hours     hours it runs in a day (h)
     * @param regulated whether a thermostat switches it within these hours
     */
    private record Device(String name, Measure power, Measure hours, boolean regulated) {
        double wattHours() {
            return Electricity.wattHoursPerDay(power.value(), hours.value());
        }

        /** Standard uncertainty of {@link #wattHours}. */
        double doubt() {
            return Conformance.combine(power.standardUncertainty() * hours.value(), power.value() * hours.standardUncertainty());
        }
    }

    private final Setup setup;
    private final List<Device> devices;

    Power(Setup setup) {
        this.setup = setup;
        this.devices = Stream.concat(setup.heaters().stream().map(Power::device), setup.lamps().stream().map(this::device)).toList();
    }

    private static Device device(Heater heater) {
        return new Device(heater.name(), heater.power(), heater.hours(), heater.onThermostat() == Stated.YES);
    }

    /** A lamp whose own hours are not told burns as long as it is told to be light. */
    private Device device(Lamp lamp) {
        return new Device(lamp.name(), lamp.power(), lamp.hours().isKnown() ? lamp.hours() : setup.care().lightHours(), false);
    }

    List<Quantity> quantities() {
        List<Quantity> quantities = new ArrayList<>();
        if (isTold("heaters") && isTold("lamps") && devices.stream().allMatch(device -> device.power.isKnown())) {
            addPower(quantities);
            if (devices.stream().allMatch(device -> device.hours.isKnown())) {
                addEnergy(quantities);
            }
        }
        return quantities;
    }

    private boolean isTold(String section) {
        return setup.told().has(section, Subject.ENCLOSURE);
    }

    private void addPower(List<Quantity> quantities) {
        double watts = devices.stream().mapToDouble(device -> device.power.value()).sum();
        double doubt = Conformance.combine(devices.stream().mapToDouble(device -> device.power.standardUncertainty()).toArray());
        Step added = Step.of("power-added", devices.stream().map(Device::name).collect(Collectors.joining(", ")));
        quantities.add(quantity(Topic.CONNECTED_POWER, watts, doubt, added));
        Measure voltage = setup.electrical().voltage();
        if (voltage.isKnown()) {
            double amperes = Electricity.amperes(watts, voltage.value());
            double own = Conformance.combine(doubt / voltage.value(), amperes * relative(voltage));
            quantities.add(quantity(Topic.OUTLET_CURRENT, amperes, own, added, Step.of("at-voltage", voltage.amount())));
        }
    }

    private void addEnergy(List<Quantity> quantities) {
        double perDay = devices.stream().mapToDouble(Device::wattHours).sum() / WATTS_PER_KILOWATT;
        double doubt = Conformance.combine(devices.stream().mapToDouble(Device::doubt).toArray()) / WATTS_PER_KILOWATT;
        Step[] trail = hoursTaken();
        quantities.add(quantity(Topic.ENERGY_PER_DAY, perDay, doubt, trail));
        quantities.add(quantity(Topic.ENERGY_PER_MONTH, perDay * Electricity.DAYS_PER_MONTH, doubt * Electricity.DAYS_PER_MONTH, trail));
        Measure tariff = setup.electrical().tariff();
        if (tariff.isKnown()) {
            double cost = Electricity.cost(perDay, tariff.value());
            double own = Conformance.combine(doubt * tariff.value(), perDay * tariff.standardUncertainty());
            Step[] priced = Stream.concat(Stream.of(trail), Stream.of(Step.of("at-tariff", tariff.amount()))).toArray(Step[]::new);
            quantities.add(quantity(Topic.COST_PER_DAY, cost, own, priced));
            quantities.add(quantity(Topic.COST_PER_MONTH, cost * Electricity.DAYS_PER_MONTH, own * Electricity.DAYS_PER_MONTH, priced));
        }
    }

    private Step[] hoursTaken() {
        String regulated = devices.stream().filter(Device::regulated).map(Device::name).collect(Collectors.joining(", "));
        Step hours = Step.of("power-by-hours");
        return regulated.isEmpty() ? new Step[] {hours} : new Step[] {hours, Step.of("thermostat-runs-less", regulated)};
    }

    private static double relative(Measure measure) {
        return measure.standardUncertainty() / measure.value();
    }

    private static Quantity quantity(Topic topic, double value, double uncertainty, Step... trail) {
        return new Quantity(topic, Place.ANYWHERE, value, uncertainty, new Origin(Method.COMPUTED, ELECTRICAL, ""), List.of(trail));
    }
}
