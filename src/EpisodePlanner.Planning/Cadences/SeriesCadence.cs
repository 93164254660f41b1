namespace EpisodePlanner.Planning;

/// <summary>What a series' promise asks of hands and slots.</summary>
public sealed record SeriesCadence
{
    /// <summary>The series.</summary>
    public required Series Series { get; init; }

    /// <summary>Days between two uploads at most: its promise; of a promise by the month, days of a month for each upload.</summary>
    public required int Days { get; init; }

    /// <summary>At least one of so many slots in a row must be its own; 0 where even the next slot may come too late.</summary>
    public required int Slots { get; init; }

    /// <summary>Hours of bench work an episode costs.</summary>
    public required decimal BenchHours { get; init; }

    /// <summary>Hours of its tail.</summary>
    public required decimal TailHours { get; init; }

    /// <summary>From how many episodes to come these were averaged; 0 where all series' were taken, or the usual tail alone.</summary>
    public required int Episodes { get; init; }

    /// <summary>Hours an episode costs.</summary>
    public decimal Hours => BenchHours + TailHours;

    /// <summary>Hours a week that keep its promise.</summary>
    public decimal HoursAWeek => Hours * 7 / Days;
}

/// <summary>Whether promises can hold together, and what to do where they can't.</summary>
public sealed record PromisesTogether
{
    /// <summary>Whose turn each slot is, repeated for ever; empty where there is no series, or none was found that keeps every promise.</summary>
    public required ValueList<Id> Rotation { get; init; }

    /// <summary>Whether there are slots enough: the rotation keeps every promise.</summary>
    public required bool SlotsSuffice { get; init; }

    /// <summary>Whether it is certain that no order of turns keeps them; neither this nor the other where nobody knows.</summary>
    public required bool NoRotation { get; init; }

    /// <summary>Hours a week that the promises ask for.</summary>
    public required decimal HoursAWeek { get; init; }

    /// <summary>Whether hands are enough, at the loading asked for.</summary>
    public required bool HandsSuffice { get; init; }

    /// <summary>Whether slots and hands are enough.</summary>
    public bool Hold => SlotsSuffice && HandsSuffice;
}
