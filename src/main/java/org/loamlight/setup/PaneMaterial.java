package org.loamlight.setup;

/**
 * What walls, panes, lids and floors are made of, with the design values heat loss and mass are computed from: thermal
 * conductivity and density after the tables of ISO 10456 and ISO 10077-2 (secondary copies), specific heat from the same.
 * The usual thickness is judgement, for those who did not measure. Values for boards of unknown make scatter by a fifth.
 */
public enum PaneMaterial {
    GLASS(1.0, 2500, 750, 4), ACRYLIC(0.18, 1180, 1500, 4), PVC(0.17, 1390, 900, 6), POLYCARBONATE(0.20, 1200, 1200, 4),
    WOOD(0.13, 500, 1600, 18), PLYWOOD(0.13, 500, 1600, 12), OSB(0.13, 650, 1700, 15),
    /** Chipboard, coated or not: 0.12 to 0.14 W/mK in secondary copies. */
    CHIPBOARD(0.13, 650, 1700, 16), FOAM_BOARD(0.034, 35, 1450, 20),
    /** Mesh or nothing: air passes, so it has no resistance of its own. */
    MESH(0, 0, 0, 0), OTHER(0, 0, 0, 0), UNKNOWN(0, 0, 0, 0);

    private final double conductivity;
    private final double density;
    private final double specificHeat;
    private final double usualMillimetres;

    PaneMaterial(double conductivity, double density, double specificHeat, double usualMillimetres) {
        this.conductivity = conductivity;
        this.density = density;
        this.specificHeat = specificHeat;
        this.usualMillimetres = usualMillimetres;
    }

    /** Thermal conductivity (W/mK); 0 where there is none to compute with. */
    public double conductivity() {
        return conductivity;
    }

    /** Density (kg/m³); 0 where there is none to compute with. */
    public double density() {
        return density;
    }

    /** Specific heat (J/kgK); 0 where there is none to compute with. */
    public double specificHeat() {
        return specificHeat;
    }

    /** Thickness where nobody measured (mm), judgement. */
    public double usualMillimetres() {
        return usualMillimetres;
    }

    /** Whether it is a solid sheet of known make. */
    public boolean isSheet() {
        return conductivity > 0;
    }
}
