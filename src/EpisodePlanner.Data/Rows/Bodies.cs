using System.Text;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Data.Rows;

/// <summary>Between things and the JSON that rows hold.</summary>
internal static class Bodies
{
    /// <summary>The JSON of a thing or single of a kind.</summary>
    public static byte[] Write(string kind, object value) => value switch
    {
        AboutBody about => WorkshopFile.WriteShort(about),
        Settings settings => WorkshopFile.WriteShort(settings),
        AcceptedPlan accepted => WorkshopFile.WriteShort(accepted),
        IThing thing => ThingKinds.Find(kind)!.Write(thing),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "It can't be stored as JSON."),
    };

    /// <summary>The thing or single that was written.</summary>
    /// <exception cref="StorageTroubleException">The body is damaged.</exception>
    public static object Read(Aggregate what, string workshop, string body)
    {
        var bytes = Encoding.UTF8.GetBytes(body);
        var value = Read(what, bytes, out var reasons);
        return value ?? throw StorageTroubleException.Damaged($"'{what}' of workshop {workshop}", reasons);
    }

    /// <summary>The JSON of a change.</summary>
    public static string Write(Change change) => Encoding.UTF8.GetString(ChangeFile.Write(change));

    /// <summary>The change that was written.</summary>
    /// <param name="body">Its JSON.</param>
    /// <param name="where">Which row holds it, for people.</param>
    /// <exception cref="StorageTroubleException">The body is damaged.</exception>
    public static Change ReadChange(string body, string where)
    {
        var read = ChangeFile.ReadStored(Encoding.UTF8.GetBytes(body));
        return read.Thing ?? throw StorageTroubleException.Damaged(where, read.Reasons);
    }

    private static object? Read(Aggregate what, byte[] body, out ValueList<Reason> reasons)
    {
        if (ThingKinds.Find(what.Kind) is { } kind)
        {
            return kind.ReadStored(body, out reasons);
        }

        return what == Aggregate.About ? Single<AboutBody>(body, out reasons)
            : what == Aggregate.Settings ? Single<Settings>(body, out reasons)
            : what == Aggregate.Accepted ? Single<AcceptedPlan>(body, out reasons)
            : Unknown(what, out reasons);
    }

    private static T? Single<T>(byte[] body, out ValueList<Reason> reasons)
        where T : class
    {
        var read = WorkshopFile.ReadStored<T>(body);
        reasons = read.Reasons;
        return read.Thing;
    }

    private static object? Unknown(Aggregate what, out ValueList<Reason> reasons)
    {
        reasons = [new Reason("$", $"There are no '{what.Kind}' in a workshop.")];
        return null;
    }
}
