using System.Text;

namespace EpisodePlanner.Planning;

/// <summary>A place in the workshop, made step by step; its text, a JSON path, is built only when asked for.</summary>
internal sealed class Spot
{
    private readonly Spot? parent;
    private readonly string? name;
    private readonly int index;
    private readonly bool isThing;
    private readonly string? owner;

    private Spot(Spot? parent, string? name, int index = 0, bool isThing = false, string? owner = null)
    {
        this.parent = parent;
        this.name = name;
        this.index = index;
        this.isThing = isThing;
        this.owner = owner ?? parent?.owner;
    }

    /// <summary>The workshop itself: <c>$</c>.</summary>
    public static Spot Root { get; } = new(null, null, owner: "the workshop");

    /// <summary>The thing that the spot lies in, in words: "task 'weld-frame'".</summary>
    public string Owner => owner!;

    /// <summary>A member: <c>.links</c>.</summary>
    public Spot Member(string member) => new(this, member);

    /// <summary>A member that has a name of its own in sentences: "the settings".</summary>
    public Spot Member(string member, string words) => new(this, member, owner: words);

    /// <summary>An entry of a list, by its position: <c>[0]</c>.</summary>
    public Spot Item(int position) => new(this, null, position);

    /// <summary>A thing of the workshop, by its id: <c>['weld-frame']</c>.</summary>
    public Spot Thing(Id id, string words) => new(this, id.ToString(), isThing: true, owner: words);

    /// <inheritdoc/>
    public override string ToString()
    {
        var path = new StringBuilder();
        Write(path);
        return path.ToString();
    }

    private void Write(StringBuilder path)
    {
        parent?.Write(path);
        _ = (parent, isThing, name) switch
        {
            (null, _, _) => path.Append('$'),
            (_, true, _) => path.Append("['").Append(name).Append("']"),
            (_, _, null) => path.Append('[').Append(index).Append(']'),
            _ => path.Append('.').Append(name),
        };
    }
}

/// <summary>Lists walked together with the spots of their entries.</summary>
internal static class Spots
{
    /// <summary>Each entry with its spot, in order.</summary>
    public static IEnumerable<(T Item, Spot At)> At<T>(this ValueList<T> list, Spot at)
    {
        for (var i = 0; i < list.Count; i++)
        {
            yield return (list[i], at.Item(i));
        }
    }
}
