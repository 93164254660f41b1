using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>The kinds of changes by the name under which each is written, with the shape of its form.</summary>
internal static class ChangeKinds
{
    public const string Zone = "zone";

    private const string Name = "name";
    private const string Settings = "settings";
    private const string Accepted = "acceptedPlan";
    private const string TakenBack = "toldDateTakenBack";
    private const string Batch = "batch";

    /// <summary>The shapes of the forms, by the name of the kind.</summary>
    public static IReadOnlyDictionary<string, Shape> Shapes { get; } = Single()
        .Concat(ThingKinds.All.Select(kind => (Of(kind), ShapeFactory.Record(typeof(ThingForm<>).MakeGenericType(kind.Type)))))
        .ToDictionary(pair => pair.Item1, pair => pair.Item2);

    /// <summary>The name of a change's kind, and the form in which it is written.</summary>
    public static (string Kind, IChangeForm Form) FormOf(Change change) => change switch
    {
        NameChange name => Text(Name, name.To),
        ZoneChange zone => Text(Zone, zone.To),
        SettingsChange settings => (Settings, new SettingsForm { Kind = Settings, To = settings.To }),
        AcceptedPlanChange accepted => (Accepted, new AcceptedForm { Kind = Accepted, To = accepted.To }),
        ToldDateTakenBack back => (TakenBack, new TakenBackForm { Kind = TakenBack, Was = back.Was }),
        Batch batch => (Batch, new BatchForm { Kind = Batch, Changes = batch.Changes }),
        IThingChange thing => Thing(thing),
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "A kind of change that has no form."),
    };

    /// <summary>The name of the changes to things of a kind: "slotRule".</summary>
    private static string Of(ThingKind kind)
    {
        var words = kind.Word.Split(' ');
        return words[0] + string.Concat(words[1..].Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
    }

    private static IEnumerable<(string, Shape)> Single() =>
    [
        (Name, ShapeFactory.Record<TextForm>()),
        (Zone, ShapeFactory.Record<TextForm>()),
        (Settings, ShapeFactory.Record<SettingsForm>()),
        (Accepted, ShapeFactory.Record<AcceptedForm>()),
        (TakenBack, ShapeFactory.Record<TakenBackForm>()),
        (Batch, ShapeFactory.Record<BatchForm>()),
    ];

    private static (string Kind, IChangeForm Form) Text(string kind, string to) => (kind, new TextForm { Kind = kind, To = to });

    private static (string Kind, IChangeForm Form) Thing(IThingChange change)
    {
        var kind = Of(change.Set);
        return (kind, change.Form(kind));
    }
}
