using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

/// <summary>Makes changes of every kind from a seeded generator: sound ones, breaking ones, removals.</summary>
internal sealed class RandomChange(Random random)
{
    /// <summary>The changes that <see cref="Single"/> chooses among.</summary>
    public const int Kinds = 16;

    /// <summary>A batch now and then, else a single change.</summary>
    public Change Next(Workshop workshop) => random.Next(8) > 0
        ? Single(workshop, random.Next(Kinds))
        : new Batch([.. Enumerable.Range(0, random.Next(4)).Select(_ => Single(workshop, random.Next(Kinds)))]);

    /// <summary>A change of one kind.</summary>
    public Change Single(Workshop workshop, int kind) => kind switch
    {
        0 => new NameChange(Word()),
        1 => new ZoneChange(random.Next(2) == 0 ? "Europe/Lisbon" : "Moon/Base"),
        2 => new SettingsChange(workshop.Settings with { Maker = Word(), Desk = Coin() ? Id("desk") : null }),
        3 => new AcceptedPlanChange(Coin() ? null : workshop.Accepted ?? Sound.Accepted),
        4 => Thing(workshop.People, (p, id) => p with { Id = id, Name = Word() }, (id, to) => new PersonChange(id, to)),
        5 => Thing(workshop.Machines,
            (m, id) => m with { Id = id, Name = Word() },
            (id, to) => new MachineChange(id, to)),
        6 => Thing(workshop.Places,
            (p, id) => p with { Id = id, SetUpMinutes = random.Next(9) },
            (id, to) => new PlaceChange(id, to)),
        7 => Thing(workshop.Series,
            (s, id) => s with { Id = id, Milestones = s.Id == id ? s.Milestones : [] },
            (id, to) => new SeriesChange(id, to)),
        8 => Thing(workshop.Tasks, (t, id) => t with { Id = id, Note = Word() }, (id, to) => new TaskChange(id, to)),
        9 => Thing(workshop.Episodes,
            (e, id) => e with { Id = id, Title = Word(), Milestones = e.Id == id ? e.Milestones : [] },
            (id, to) => new EpisodeChange(id, to)),
        10 => Thing(workshop.SlotRules,
            (s, id) => s with { Id = id, WindowMinutes = random.Next(90) },
            (id, to) => new SlotRuleChange(id, to)),
        11 => Thing(workshop.Uploads,
            (u, id) => u with { Id = id, Title = Word() },
            (id, to) => new UploadChange(id, to)),
        12 => Thing(workshop.Log, (l, id) => l with { Id = id, Note = Word() }, (id, to) => new LogChange(id, to)),
        13 => Thing(workshop.TimedLines,
            (l, id) => l with { Id = id, Text = Word() },
            (id, to) => new TimedLineChange(id, to)),
        14 => Thing(workshop.Bookings,
            (b, id) => b with { Id = id, Cost = random.Next(99) },
            (id, to) => new BookingChange(id, to)),
        _ => Thing(workshop.ToldDates, (t, id) => t with { Id = id }, (id, to) => new ToldDateChange(id, to)),
    };

    private Change Thing<T>(Keyed<T> things, Func<T, Id, T> edit, Func<Id, T?, Change> change)
        where T : class, IThing
    {
        var fresh = Id($"new-{random.Next(6)}");
        if (things.Count == 0)
        {
            return change(fresh, null);
        }

        var thing = things.ElementAt(random.Next(things.Count));
        return random.Next(3) switch
        {
            0 => change(thing.Id, null),
            1 => change(thing.Id, edit(thing, thing.Id)),
            _ => change(fresh, edit(thing, fresh)),
        };
    }

    private bool Coin() => random.Next(2) == 0;

    private string Word() => $"word {random.Next(100)}";
}
