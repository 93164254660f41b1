using EpisodePlanner.Scheduling;

namespace EpisodePlanner.Planning;

/// <summary>What stages need: stations that exist, choices that can be tried out, one machine for a run.</summary>
internal static class NeedRules
{
    private const int MostCombinations = 64;

    public static void Check(Inspection inspection, Stage stage, Spot at)
    {
        var allKnown = true;
        foreach (var (choice, spot) in stage.Needs.At(at))
        {
            inspection.RefuseIf(choice.Count == 0, spot, "This choice is empty; name a station or remove it.");
            foreach (var (station, where) in choice.At(spot))
            {
                allKnown &= inspection.Leads(where, Referent.Station, station);
                CheckWait(inspection, stage.Kind, station, where);
            }
        }

        inspection.RefuseIf(
            Combinations(stage.Needs) > MostCombinations,
            at,
            $"The choices make more than {MostCombinations} combinations; name fewer stations to choose from.");
        inspection.RefuseIf(
            stage.Kind is StageKind.Run && allKnown && !HasOneMachineChoice(inspection.Register, stage.Needs),
            at,
            "A run needs one machine: one list of machines to choose from, and no machine elsewhere.");
    }

    private static void CheckWait(Inspection inspection, StageKind kind, Id station, Spot at)
    {
        var word = inspection.Register.StationWord(station);
        inspection.RefuseIf(
            kind is StageKind.Wait && word is not null && word != ThingKinds.Places.Word,
            at,
            $"A wait can only fill a place, and '{station}' is a {word}; name a place or remove it.");
    }

    private static int Combinations(ValueList<ValueList<Id>> needs)
    {
        var combinations = 1;
        foreach (var choice in needs)
        {
            var product = combinations * Math.Clamp(choice.Count, 1, MostCombinations + 1);
            combinations = Math.Min(product, MostCombinations + 1);
        }

        return combinations;
    }

    private static bool HasOneMachineChoice(Register register, ValueList<ValueList<Id>> needs)
    {
        bool IsMachine(Id station) => register.StationWord(station) == ThingKinds.Machines.Word;
        var withMachines = needs.Where(choice => choice.Any(IsMachine)).ToArray();
        return withMachines is [var only] && only.All(IsMachine);
    }
}
