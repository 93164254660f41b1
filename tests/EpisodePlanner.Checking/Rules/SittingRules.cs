namespace EpisodePlanner.Checking;

/// <summary>
/// Setting up before and tidying after each sitting. A sitting goes on where a person's next work is at the same place
/// in the same opening of person and place, however long the gap; work that was going on at minute 0 is set up then.
/// </summary>
internal static class SittingRules
{
    public static void Check(Findings findings)
    {
        var byPerson = new Dictionary<int, List<Sitting>>();
        for (var stage = 0; stage < findings.WellFormed.Length; stage++)
        {
            if (findings.WellFormed[stage])
                Sittings.AddTo(byPerson, findings.Problem, stage, findings.Schedule.Parts(stage));
        }

        foreach (var (person, list) in byPerson.OrderBy(pair => pair.Key))
            CheckPerson(findings, person, [.. list.OrderBy(s => s.Start)]);
    }

    private static void CheckPerson(Findings findings, int person, Sitting[] sittings)
    {
        for (var i = 0; i < sittings.Length; i++)
        {
            var here = sittings[i];
            Sitting? previous = i > 0 ? sittings[i - 1] : null;
            Sitting? next = i + 1 < sittings.Length ? sittings[i + 1] : null;
            foreach (var place in here.Places)
                CheckOpening(findings, person, place, here, (previous, next));

            if (next is { } after && after.Start >= here.End)
                CheckChange(findings, person, here, after);
        }
    }

    private static void CheckOpening(
        Findings findings, int person, int place, Sitting here, (Sitting? Previous, Sitting? Next) around)
    {
        // Work outside the hours is told by its own rule.
        if (findings.Hours.Shared(person, place).Around(here.Start) is not { } opening || here.End > opening.End)
            return;

        var about = findings.Problem.Stations[place];
        var sitsAlready = findings.Problem.Stages[here.Stage].Begun && opening.Start == 0 && around.Previous is null;
        if (!sitsAlready && !Continues(around.Previous, place, opening) && here.Start - about.SetUpMinutes < opening.Start)
            findings.Add(here.Stage, $"works at {here.Start} without {about.SetUpMinutes} minutes of setting up at {about.Name}");

        if (!Continues(around.Next, place, opening) && here.End + about.TidyMinutes > opening.End)
            findings.Add(here.Stage, $"works until {here.End} without {about.TidyMinutes} minutes of tidying at {about.Name}");
    }

    private static void CheckChange(Findings findings, int person, Sitting from, Sitting to)
    {
        var tidy = Sittings.Tidy(findings.Problem, from.Places.Where(p => !IsOneSitting(findings, person, p, from, to)));
        var setUp = Sittings.SetUp(findings.Problem, to.Places.Where(p => !IsOneSitting(findings, person, p, from, to)));
        if (from.End + tidy + setUp > to.Start)
        {
            findings.Add(
                to.Stage,
                $"works at {to.Start}, too soon for {findings.Problem.Stations[person].Name} after "
                + $"'{findings.Problem.Stages[from.Stage].Name}' at {from.End}: tidying and setting up take {tidy + setUp} minutes");
        }
    }

    private static bool IsOneSitting(Findings findings, int person, int place, Sitting from, Sitting to) =>
        from.Places.Contains(place)
        && findings.Hours.Shared(person, place).Around(to.Start) is { } opening
        && Continues(from, place, opening) && to.Places.Contains(place);

    private static bool Continues(Sitting? neighbour, int place, Stretch opening) =>
        neighbour is { } other && other.Places.Contains(place) && other.End >= opening.Start && other.Start < opening.End;
}
