using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>
/// How values of one type look in the workshop file. The same shape reads them, writes them, orders them, walks them
/// and describes them in the schema, so that these can't differ.
/// </summary>
internal abstract class Shape
{
    /// <summary>The type of the values.</summary>
    public abstract Type Type { get; }

    /// <summary>What would be right, for sentences: <c>a date such as "2027-03-05"</c>.</summary>
    public abstract string Wanted { get; }

    /// <summary>Stands in for a value that could not be read, so that reading can go on.</summary>
    public abstract object Placeholder { get; }

    /// <summary>The value of an element; what is wrong with it goes into <paramref name="reading"/>.</summary>
    public abstract object Read(JsonElement element, Reading reading);

    /// <summary>Writes a value in canonical form.</summary>
    public abstract void Write(CanonicalWriter writer, object value);

    /// <summary>A total order that agrees with equality; lists without an order of their own are sorted by it.</summary>
    public abstract int Compare(object left, object right);

    /// <summary>The name under which a schema document keeps these values; null where they have none.</summary>
    public virtual string? PartName => null;

    /// <summary>The JSON Schema of the values.</summary>
    public abstract JsonObject Describe(SchemaParts parts);

    /// <summary>The value with each leaf put through a function and each list without an order sorted.</summary>
    public virtual object Rebuild(object value, Func<object, object> leaf) => leaf(value);

    /// <summary>Whether arrays of these values stand on one line.</summary>
    public virtual bool IsLeaf => true;
}
