using static EpisodePlanner.Planning.WorkKind;

namespace EpisodePlanner.Planning;

/// <summary>Which work and which machines ask for which cautions.</summary>
internal static class CautionTables
{
    /// <summary>
    /// By kind of work. Left out on purpose: design, code, film, edit, order and approval happen at a desk; assembling
    /// and wiring at extra-low voltage have no public source of their own; of "other" nothing is known.
    /// </summary>
    public static readonly IReadOnlyDictionary<WorkKind, ValueList<Caution>> ByWork =
        new Dictionary<WorkKind, ValueList<Caution>>
        {
            [Print] = [Printing.Emissions],
            [Route] = [EyesAndFace.Chips],
            [LaserCut] = [EyesAndFace.Light],
            [Cut] = [EyesAndFace.Chips],
            [WorkKind.Machine] = [EyesAndFace.Chips],
            [Weld] = [EyesAndFace.Light, HeatAndSparks.FireWatch],
            [Grind] = [EyesAndFace.Chips, HeatAndSparks.FireWatch, HeatAndSparks.Guards],
            [Glue] = [EyesAndFace.Splashes],
            [Paint] = [EyesAndFace.Splashes],
            [MainsWire] = [Electricity.Mains],
            [Solder] = [EyesAndFace.Splashes],
            [Battery] = [Electricity.Lithium],
            [StoredEnergy] = [StoredEnergyCautions.Springs],
            [CompressedAir] = [StoredEnergyCautions.Air, StoredEnergyCautions.Springs],
            [Test] = [Motion.FirstMotion, Motion.FirstTest, Motion.EmergencyStop],
            [Ride] = [Motion.WornOrRidden, Motion.FirstTest, Motion.EmergencyStop],
            [Move] = [StoredEnergyCautions.Springs],
        };

    /// <summary>By kind of machine; every kind has at least one.</summary>
    public static readonly IReadOnlyDictionary<MachineKind, ValueList<Caution>> ByMachine =
        new Dictionary<MachineKind, ValueList<Caution>>
        {
            [MachineKind.Other] = [StoredEnergyCautions.Springs],
            [MachineKind.Printer] = [Printing.Emissions],
            [MachineKind.Router] = [EyesAndFace.Chips],
            [MachineKind.Laser] = [EyesAndFace.Light],
            [MachineKind.Mill] = [EyesAndFace.Chips],
            [MachineKind.Lathe] = [EyesAndFace.Chips],
            [MachineKind.Saw] = [EyesAndFace.Chips],
            [MachineKind.Welder] = [EyesAndFace.Light, HeatAndSparks.FireWatch],
            [MachineKind.Oven] = [StoredEnergyCautions.Heat],
        };
}
