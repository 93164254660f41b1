using System.Text.Json;

namespace EpisodePlanner.Planning.Files;

/// <summary>
/// A change as JSON, by the same contract as the workshop file:
/// <c>{ "kind": "task", "id": "weld-frame", "to": { … } }</c>, <c>{ "kind": "task", "id": "weld-frame", "remove": true }</c>,
/// <c>{ "kind": "settings", "to": { … } }</c>, <c>{ "kind": "batch", "changes": [ … ] }</c>.
/// </summary>
public static class ChangeFile
{
    /// <summary>The most changes in one batch.</summary>
    public const int MostChanges = 10_000;

    /// <summary>
    /// Reads a change that somebody asks for; tells everything that is wrong at once. That a told date is taken back
    /// can't be asked for: only its undo does that.
    /// </summary>
    public static ReadResult<Change> Read(ReadOnlyMemory<byte> json)
    {
        var read = ReadStrictly(json);
        return read.IsRead && Forbidden(read.Thing, "$").ToValueList() is { Count: > 0 } reasons ? new(reasons) : read;
    }

    /// <summary>Reads a change that was written by <see cref="Write"/> and kept, however large it is.</summary>
    public static ReadResult<Change> ReadStored(ReadOnlyMemory<byte> json) => Kept.Read<Change>(json, ChangeShape.Instance);

    /// <summary>The same change with each list whose order means nothing (<see cref="AnyOrderAttribute"/>) sorted.</summary>
    public static Change Order(Change change) => (Change)ChangeShape.Instance.Rebuild(change, leaf => leaf);

    /// <summary>The bytes of a change, on one line.</summary>
    public static byte[] Write(Change change)
    {
        var writer = new CanonicalWriter(isShort: true);
        ChangeShape.Instance.Write(writer, Order(change));
        return writer.Finish();
    }

    private static ReadResult<Change> ReadStrictly(ReadOnlyMemory<byte> json)
    {
        if (Syntax.Problem(json.Span) is { } problem)
        {
            return new([new Reason("$", problem)]);
        }

        using var document = JsonDocument.Parse(json);
        var reading = new Reading();
        var change = (Change)ChangeShape.Instance.Read(document.RootElement, reading);
        return reading.Count > 0 ? new(reading.Reasons()) : new(Order(change));
    }

    private static IEnumerable<Reason> Forbidden(Change change, string where) => change switch
    {
        Batch batch => batch.Changes.SelectMany((inner, i) => Forbidden(inner, $"{where}.changes[{i}]")),
        ToldDateTakenBack => [new Reason(where, "A told date is kept for ever; undo the change that added it, if that was a slip.")],
        _ => [],
    };
}
