using System.Text.Json;
using System.Text.Json.Nodes;

namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>Arrays of values: sequences, or sorted where their order means nothing.</summary>
internal sealed class ListShape<T>(Shape element, int least, int most, bool anyOrder) : Shape
    where T : notnull
{
    public override Type Type => typeof(ValueList<T>);

    public override string Wanted => "an array in [ ]";

    public override object Placeholder => ValueList.Create<T>([]);

    public override bool IsLeaf => false;

    public override object Read(JsonElement json, Reading reading)
    {
        if (!Arrays.TryRead<T>(json, element, reading, out var items))
        {
            return Placeholder;
        }

        if (!reading.IsStored)
        {
            CheckItems(items, reading);
        }

        return ValueList.Create<T>(items);
    }

    public override void Write(CanonicalWriter writer, object value)
    {
        writer.BeginArray(element.IsLeaf);
        foreach (var item in (ValueList<T>)value)
        {
            writer.NextItem();
            element.Write(writer, item);
        }

        writer.EndArray();
    }

    public override int Compare(object left, object right)
    {
        var (a, b) = ((ValueList<T>)left, (ValueList<T>)right);
        for (var i = 0; i < Math.Min(a.Count, b.Count); i++)
        {
            if (element.Compare(a[i], b[i]) is var order and not 0)
            {
                return order;
            }
        }

        return a.Count.CompareTo(b.Count);
    }

    public override object Rebuild(object value, Func<object, object> leaf)
    {
        var list = (ValueList<T>)value;
        var items = new T[list.Count];
        var same = true;
        for (var i = 0; i < items.Length; i++)
        {
            items[i] = (T)element.Rebuild(list[i], leaf);
            same &= EqualityComparer<T>.Default.Equals(items[i], list[i]);
        }

        if (anyOrder && !IsSorted(items))
        {
            Array.Sort(items, (a, b) => element.Compare(a, b));
            same = false;
        }

        return same ? list : ValueList.Create<T>(items);
    }

    public override JsonObject Describe(SchemaParts parts) => Arrays.Describe(parts.Of(element), least, most);

    private void CheckItems(T[] items, Reading reading)
    {
        if (items.Length < least || items.Length > most)
        {
            reading.Refuse(Arrays.CountProblem(items.Length, least, most));
        }

        Arrays.RefuseRepeatedIds(items, reading);
    }

    private bool IsSorted(T[] items)
    {
        for (var i = 1; i < items.Length; i++)
        {
            if (element.Compare(items[i - 1], items[i]) > 0)
            {
                return false;
            }
        }

        return true;
    }
}
