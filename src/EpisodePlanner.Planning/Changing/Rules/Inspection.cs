namespace EpisodePlanner.Planning;

/// <summary>One look over a workshop: what is in it, what was in it before a change, the reasons found.</summary>
internal sealed class Inspection(Workshop workshop, Workshop? before, ReasonList reasons)
{
    private const int FewEnoughToList = 5;

    private readonly Dictionary<Referent, Id[]> known = [];
    private readonly Register? registerBefore = before is null ? null : new Register(before);

    /// <summary>The workshop looked at.</summary>
    public Workshop Workshop { get; } = workshop;

    /// <summary>What can be referred to in it.</summary>
    public Register Register { get; } = new(workshop);

    /// <summary>Finds what was meant.</summary>
    public Nearest Nearest { get; } = new();

    /// <summary>Notes what is wrong at a spot and what would be right.</summary>
    public void Refuse(Spot where, string says) => reasons.Add(where, says);

    /// <summary>Notes it where the rule is broken.</summary>
    public void RefuseIf(bool broken, Spot where, string says)
    {
        if (broken)
        {
            Refuse(where, says);
        }
    }

    /// <summary>Refuses a reference that leads nowhere; true where it leads to something.</summary>
    public bool Leads(Spot where, Referent kind, Id? to)
    {
        if (to is not { } id)
        {
            return false;
        }

        if (Register.Knows(kind, id))
        {
            return true;
        }

        var word = kind.ToString().ToLowerInvariant();
        Refuse(where, registerBefore?.Knows(kind, id) == true
            ? StillNamed(where, word, id)
            : Unknown(word, id, Known(kind)));
        return false;
    }

    /// <summary>Refuses a stage that its task doesn't have.</summary>
    public void LeadsToStage(Spot where, Id task, Id stage)
    {
        if (Register.KnowsStage(task, stage))
        {
            return;
        }

        var stages = Workshop.Tasks.Find(task)!.Stages.Select(s => s.Id).ToArray();
        Refuse(where, registerBefore?.KnowsStage(task, stage) == true
            ? StillNamed(where, "stage", stage)
            : Unknown("stage", stage, stages, $" in task '{task}'"));
    }

    /// <summary>Refuses a shot that its task doesn't have.</summary>
    public void LeadsToShot(Spot where, Id task, Id shot)
    {
        if (Register.KnowsShot(task, shot))
        {
            return;
        }

        var shots = Workshop.Tasks.Find(task)!.Shots.Select(s => s.Id).ToArray();
        Refuse(where, registerBefore?.KnowsShot(task, shot) == true
            ? StillNamed(where, "shot", shot)
            : Unknown("shot", shot, shots, $" in task '{task}'"));
    }

    private Id[] Known(Referent kind)
    {
        if (!known.TryGetValue(kind, out var ids))
        {
            known.Add(kind, ids = [.. Register.All(kind)]);
        }

        return ids;
    }

    private string Unknown(string word, Id id, Id[] others, string within = "")
    {
        var nearest = Nearest.To(id.ToString(), others.Select(k => k.ToString()));
        var instead = (nearest, others.Length) switch
        {
            ({ } name, _) => $"the nearest is '{name}'",
            (_, 0) => "there is none at all",
            (_, <= FewEnoughToList) => $"there is {string.Join(", ", others.Select(k => $"'{k}'"))}",
            _ => "name one that exists",
        };
        return $"There is no {word} '{id}'{within}; {instead}.";
    }

    private static string StillNamed(Spot where, string word, Id id) =>
        $"The {word} '{id}' can't go while {where.Owner} names it; change or remove that first.";
}
