using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Arrays of things with ids; the file holds them in the order of their ids.</summary>
internal sealed class KeyedShape<T>(RecordShape<T> element) : Shape
    where T : class, IThing
{
    public override Type Type => typeof(Keyed<T>);

    public override string Wanted => "an array in [ ]";

    public override object Placeholder => Keyed.Create<T>([]);

    public override bool IsLeaf => false;

    public override object Read(JsonElement json, Reading reading)
    {
        if (!Arrays.TryRead<T>(json, element, reading, out var items))
        {
            return Placeholder;
        }

        Arrays.RefuseRepeatedIds(items, reading);
        items = Naming.Complete(items, element, []);
        reading.Remember(items);
        return Keyed.Create<T>(items);
    }

    public override void Write(CanonicalWriter writer, object value)
    {
        writer.BeginArray(onOneLine: false);
        foreach (var item in (Keyed<T>)value)
        {
            writer.NextItem();
            element.Write(writer, item);
        }

        writer.EndArray();
    }

    public override int Compare(object left, object right) =>
        throw new NotSupportedException("Sets of things stand at the root, where nothing is sorted by them.");

    public override object Rebuild(object value, Func<object, object> leaf)
    {
        var set = (Keyed<T>)value;
        var items = new T[set.Count];
        var (next, same) = (0, true);
        foreach (var thing in set)
        {
            items[next] = (T)element.Rebuild(thing, leaf);
            same &= ReferenceEquals(items[next++], thing);
        }

        return same ? set : Keyed.Create<T>(items);
    }

    public override JsonObject Describe(SchemaParts parts) => Arrays.Describe(parts.Of(element), 0, int.MaxValue);
}
