using System.Globalization;
using System.Text;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Web.Forms;
using EpisodePlanner.Web.Telling;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>What sort of thing can be supposed by a form.</summary>
public enum SupposeKind
{
    /// <summary>Somebody is away for days.</summary>
    Away,

    /// <summary>A run or a test fails.</summary>
    Fails,

    /// <summary>A delivery or another wait takes longer.</summary>
    Late,

    /// <summary>One more station.</summary>
    OneMore,

    /// <summary>A series rests, or ends.</summary>
    Rests,

    /// <summary>Any other change.</summary>
    Other,
}

/// <summary>A form that supposes something.</summary>
/// <param name="Kind">What sort of thing.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Fields">Its fields.</param>
public sealed record SupposeForm(SupposeKind Kind, string Title, ValueList<FormField> Fields)
{
    /// <summary>The first field that something is wrong with; null for none.</summary>
    public string? FocusOn => Fields.FirstOrDefault(one => one.Problems.Count > 0)?.Name;
}

/// <summary>The forms that suppose something about a plan: what they ask, and what they make of the answers.</summary>
/// <param name="plan">The plan.</param>
/// <param name="typed">What was typed into a field, by its name; empty for nothing.</param>
internal sealed class SupposeForms(Plan plan, Func<string, string> typed)
{
    private const int MostChoices = 60;
    private readonly PlanNames names = new(plan);
    private readonly Dictionary<string, string> problems = [];

    private Workshop Workshop => plan.Request.Workshop;

    /// <summary>What a form asks for; null where an answer is missing or can't be, with what is wrong kept for <see cref="All"/>.</summary>
    public Supposition? Read(SupposeKind kind)
    {
        var read = kind switch
        {
            SupposeKind.Away => Away(),
            SupposeKind.Fails => Fails(),
            SupposeKind.Late => Late(),
            SupposeKind.OneMore => Suppositions.OneMore(Workshop, Chosen("oneMore.station")),
            SupposeKind.Rests => Rests(),
            _ => Other(),
        };
        if (read is null)
        {
            problems.TryAdd(FirstField(kind), "Choose one of these.");
            return null;
        }

        if (problems.Count == 0 && Changes.Apply(Workshop, read.Change) is Refused refused)
        {
            problems[FirstField(kind)] = string.Join(" ", refused.Reasons.Select(reason => reason.Says));
        }

        return problems.Count == 0 ? read : null;
    }

    /// <summary>Every form, with what was typed and what is wrong.</summary>
    public ValueList<SupposeForm> All() =>
    [
        new(SupposeKind.Away, "Somebody is away",
        [
            Choice("away.person", "Who", Suppositions.PeopleOf(Workshop).Select(person => (person.Id, person.Name))),
            Text("away.from", "From", "The first day.", "date"),
            Text("away.days", "Days", "Seven for a week.", "number"),
        ]),
        new(SupposeKind.Fails, "A run or a test fails",
        [
            Choice("fails.stage", "Which", Failing().Select(stage => (KeyOf(stage.Key), $"{stage.Name}{(stage.Start is { } start ? $", {names.Moment(start)}" : "")}"))),
        ]),
        new(SupposeKind.Late, "Something comes late",
        [
            Choice("late.stage", "Which wait", Waits().Select(stage => (KeyOf(stage.Key), stage.Name))),
            Text("late.days", "Days longer", "On the clock; business days where the wait is counted in them.", "number"),
        ]),
        new(SupposeKind.OneMore, "One more station", [Choice("oneMore.station", "A second one of", Stations())]),
        new(SupposeKind.Rests, "A series rests or ends",
        [
            Choice("rests.series", "Series", Workshop.Series.Where(series => series.State != SeriesState.Finished).Select(series => (series.Id, series.Name))),
            Text("rests.until", "Rests until", "It comes back on this day. Leave it empty to suppose that the series is finished.", "date"),
        ]),
        new(SupposeKind.Other, "Anything else",
        [
            Text("other.name", "Called", "A word for it, as in: without the canopy.", "text"),
            Text("other.change", "Changes", "One change, or a batch, as the API takes them: { \"kind\": \"task\", \"id\": \"canopy\", \"remove\": true }", "text", manyLines: true),
        ]),
    ];

    private static string FirstField(SupposeKind kind) => kind switch
    {
        SupposeKind.Away => "away.person",
        SupposeKind.Fails => "fails.stage",
        SupposeKind.Late => "late.stage",
        SupposeKind.OneMore => "oneMore.station",
        SupposeKind.Rests => "rests.series",
        _ => "other.change",
    };

    private Supposition? Away() => (Day("away.from"), Number("away.days")) is ({ } from, { } days)
        ? Suppositions.Away(Workshop, Chosen("away.person"), from, days)
        : null;

    private Supposition? Fails() => Stage("fails.stage") is { } stage ? Suppositions.Fails(plan, stage) : null;

    private Supposition? Late() => (Stage("late.stage"), Number("late.days")) is ({ } stage, { } days)
        ? Suppositions.Late(Workshop, stage.Task, stage.Stage, days)
        : null;

    private Supposition? Rests()
    {
        var series = Chosen("rests.series");
        return typed("rests.until").Trim().Length == 0
            ? Suppositions.Finishes(Workshop, series)
            : Day("rests.until") is { } until ? Suppositions.Rests(Workshop, series, until) : null;
    }

    private Supposition? Other()
    {
        var read = ChangeFile.Read(Encoding.UTF8.GetBytes(typed("other.change")));
        if (!read.IsRead)
        {
            problems["other.change"] = string.Join(" ", read.Reasons.Select(reason => reason.ToString()));
            return null;
        }

        var name = typed("other.name").Trim();
        return new Supposition(name.Length is > 0 and <= 200 ? name : "other changes", read.Thing);
    }

    private IEnumerable<PlannedStage> Failing() => plan.Stages
        .Where(stage => stage.Key.IsTask && (stage.Kind == StageKind.Run || Of(stage.Key)?.FailureChance > 0))
        .Take(MostChoices);

    private IEnumerable<PlannedStage> Waits() => plan.Stages.Where(stage => stage.Key.IsTask && stage.Kind == StageKind.Wait).Take(MostChoices);

    private IEnumerable<(Id Id, string Name)> Stations() =>
    [
        .. Suppositions.PeopleOf(Workshop).Select(person => (person.Id, person.Name)),
        .. Workshop.Machines.Select(machine => (machine.Id, machine.Name)),
        .. Workshop.Places.Where(place => !place.ByBookingOnly).Select(place => (place.Id, place.Name)),
    ];

    private Stage? Of(StageKey key) => Workshop.Tasks.Find(key.Task)?.Stages.FirstOrDefault(stage => stage.Id == key.Stage);

    private static string KeyOf(StageKey key) => $"{key.Task}/{key.Stage}";

    private StageKey? Stage(string field) => typed(field).Split('/') is [var task, var stage] && Id.IsValid(task) && Id.IsValid(stage)
        ? StageKey.OfTask(new Id(task), new Id(stage))
        : null;

    private Id Chosen(string field) => Id.IsValid(typed(field)) ? new Id(typed(field)) : default;

    private LocalDate? Day(string field)
    {
        var read = LocalDatePattern.Iso.Parse(typed(field).Trim());
        if (read.Success)
        {
            return read.Value;
        }

        problems[field] = string.Create(CultureInfo.InvariantCulture, $"This is no day; one is written {names.Today:uuuu-MM-dd}.");
        return null;
    }

    private int? Number(string field)
    {
        if (int.TryParse(typed(field).Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= Suppositions.MostDays)
        {
            return number;
        }

        problems[field] = $"A whole number from 1 to {Suppositions.MostDays} would do.";
        return null;
    }

    private ChoiceField Choice<T>(string name, string label, IEnumerable<(T Value, string Label)> options) => new()
    {
        Name = name,
        Label = label,
        IsRequired = true,
        Options = options.Select(option => new FormOption($"{option.Value}", option.Label)).ToValueList(),
        Chosen = [typed(name)],
        Problems = ProblemsOf(name),
    };

    private TextField Text(string name, string label, string help, string type, bool manyLines = false) => new()
    {
        Name = name,
        Label = label,
        Help = help,
        Type = type,
        IsWhole = true,
        ManyLines = manyLines,
        Value = typed(name),
        Problems = ProblemsOf(name),
    };

    private ValueList<string> ProblemsOf(string name) => problems.TryGetValue(name, out var problem) ? [problem] : [];
}
