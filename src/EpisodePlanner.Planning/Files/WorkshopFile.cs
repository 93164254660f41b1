using System.Text.Json;
using EpisodePlanner.Planning.Files.Shapes;

namespace EpisodePlanner.Planning.Files;

/// <summary>
/// The workshop file: one JSON document in UTF-8. Reading is strict and tells everything that is wrong at once; writing
/// is canonical, so that what was written comes back byte-identical.
/// </summary>
public static class WorkshopFile
{
    /// <summary>The largest file that is read: 10 MB.</summary>
    public const int MaximumBytes = 10 * 1_024 * 1_024;

    /// <summary>Reads a whole workshop, chooses the ids that a hand-written file leaves out, and checks every rule.</summary>
    public static ReadResult<Workshop> Read(ReadOnlyMemory<byte> file) => Read(file, FormatSteps.Known);

    /// <summary>Reads a whole workshop of any format that the given steps reach.</summary>
    public static ReadResult<Workshop> Read(ReadOnlyMemory<byte> file, FormatSteps steps)
    {
        if (Syntax.Problem(file.Span) is { } problem)
        {
            return new([new Reason("$", problem)]);
        }

        using var document = JsonDocument.Parse(file);
        return Upgrading.Upgrade(document.RootElement, steps, out var root) is { } reason
            ? new([reason])
            : WorkshopReader.Read(root);
    }

    /// <summary>Reads the body of one thing (a task, a series, the settings …) as the workshop file holds it.</summary>
    /// <remarks>An id that is left out stays empty; rules between things are for the caller to check.</remarks>
    public static ReadResult<T> Read<T>(ReadOnlyMemory<byte> body)
        where T : class
    {
        if (Syntax.Problem(body.Span) is { } problem)
        {
            return new([new Reason("$", problem)]);
        }

        using var document = JsonDocument.Parse(body);
        var reading = new Reading();
        var thing = ImportCompletion.CompleteParts((T)ShapeFactory.Record<T>().Read(document.RootElement, reading));
        return reading.Count > 0 ? new(reading.Reasons()) : new(Order(thing));
    }

    /// <summary>
    /// Reads the body of one thing that <see cref="WriteShort{T}"/> wrote and that was kept: as large as it may be, with
    /// its ids and its order as they were.
    /// </summary>
    public static ReadResult<T> ReadStored<T>(ReadOnlyMemory<byte> body)
        where T : class => Kept.Read<T>(body, ShapeFactory.Record<T>());

    /// <summary>The canonical bytes of a workshop.</summary>
    public static byte[] Write(Workshop workshop) => Write<Workshop>(workshop);

    /// <summary>The canonical bytes of one thing.</summary>
    public static byte[] Write<T>(T thing)
        where T : class => Write(thing, new CanonicalWriter());

    /// <summary>The canonical bytes of one thing without spaces and line feeds, for storing.</summary>
    public static byte[] WriteShort<T>(T thing)
        where T : class => Write(thing, new CanonicalWriter(isShort: true));

    /// <summary>The same thing with each list whose order means nothing (<see cref="AnyOrderAttribute"/>) sorted.</summary>
    public static T Order<T>(T thing)
        where T : class => (T)ShapeFactory.Record<T>().Rebuild(thing, leaf => leaf);

    private static byte[] Write<T>(T thing, CanonicalWriter writer)
        where T : class
    {
        ShapeFactory.Record<T>().Write(writer, Order(thing));
        return writer.Finish();
    }
}
