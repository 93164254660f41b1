using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.Json;
using EpisodePlanner.Planning.Files.Text;

namespace EpisodePlanner.Planning.Files;

/// <summary>One reading of a document: where it stands, and what was wrong so far.</summary>
/// <param name="isStored">
/// Whether the document was written here and kept: what only limits the wishes of people is not looked at again.
/// </param>
internal sealed class Reading(bool isStored = false)
{
    /// <summary>The most reasons that are told one by one.</summary>
    public const int MostReasons = 200;

    private readonly List<Reason> reasons = [];
    private readonly List<Place> places = [];
    private readonly Damage damage = new();

    /// <summary>Whether the document was written here and kept.</summary>
    public bool IsStored => isStored;

    /// <summary>How many things were wrong, told or not.</summary>
    public int Count { get; private set; }

    /// <summary>Whether more would only be counted.</summary>
    public bool IsFull => Count > MostReasons;

    /// <summary>Whether a thing's id could not be read, so that references to it can't be judged.</summary>
    public bool HasNameless { get; private set; }

    /// <summary>The place of each thing in the arrays of the root, by the array's name and the thing's id.</summary>
    public Dictionary<(string Array, Id Id), int> Positions { get; } = [];

    /// <summary>The place now being read.</summary>
    public string Here => "$" + string.Concat(places);

    /// <summary>Steps into a member.</summary>
    public void Enter(string member) => places.Add(new Place(member, 0));

    /// <summary>Steps into an element of an array.</summary>
    public void Enter(int index) => places.Add(new Place(null, index));

    /// <summary>Steps out again.</summary>
    public void Leave() => places.RemoveAt(places.Count - 1);

    /// <summary>Notes that the value here can't be taken.</summary>
    /// <param name="says">What is wrong and what would be right.</param>
    /// <param name="alone">Whether its neighbours in the object make sense without it.</param>
    public void Refuse(string says, bool alone = false)
    {
        damage.Add([.. places.Select(place => place.ToString())], alone);
        Tell(new Reason(Here, says));
    }

    /// <summary>Notes that the value of a member of the object here can't be taken.</summary>
    public void Refuse(string member, string says)
    {
        Enter(member);
        Refuse(says);
        Leave();
    }

    /// <summary>Notes that the value here is of the wrong kind.</summary>
    public void RefuseKind(JsonElement element, string wanted) => Refuse(element.ValueKind is JsonValueKind.Null
        ? $"null can't stand here; leave the member out, or write {wanted}."
        : $"This is {Say.Kind(element.ValueKind)}; {wanted} would be right.");

    /// <summary>Notes something that is wrong without touching any value, such as an unknown member.</summary>
    public void Complain(string member, string says)
    {
        Enter(member);
        Tell(new Reason(Here, says));
        Leave();
    }

    /// <summary>Notes a reason found after reading, unless it may only follow from a value that was refused.</summary>
    /// <param name="reason">The reason, with its place in the file.</param>
    /// <param name="standsAlone">Whether it can't follow from a neighbour in the same object, as with a reference.</param>
    public void TellUnlessDamaged(Reason reason, bool standsAlone)
    {
        if (!damage.MayExplain(reason.Where, standsAlone))
        {
            Tell(reason);
        }
    }

    /// <summary>Counts a reason that is not told one by one.</summary>
    public void CountOneMore() => Count++;

    /// <summary>Notes that a thing could not be read at all.</summary>
    public void NoteNameless() => HasNameless = true;

    /// <summary>Notes where the things of the array here stand.</summary>
    public void Remember<T>(T[] things)
        where T : IThing
    {
        for (var i = 0; i < things.Length; i++)
        {
            Positions[(places[^1].Member!, things[i].Id)] = i;
        }
    }

    /// <summary>The text of an element; refuses anything else.</summary>
    public bool TryText(JsonElement element, string wanted, [NotNullWhen(true)] out string? text)
    {
        text = null;
        if (element.ValueKind != JsonValueKind.String)
        {
            RefuseKind(element, wanted);
        }
        else if (!Unicode.TryGet(element, out text))
        {
            Refuse("This text holds half of a \\u surrogate pair; write the character itself.");
        }

        return text is not null;
    }

    /// <summary>Everything that was wrong, at most <see cref="MostReasons"/> and a closing one.</summary>
    public ValueList<Reason> Reasons() => Count <= MostReasons
        ? reasons.ToValueList()
        : [.. reasons, new Reason("$", $"There are {Say.Number(Count - MostReasons)} more; mend these first.")];

    private void Tell(Reason reason)
    {
        Count++;
        if (reasons.Count < MostReasons)
        {
            reasons.Add(reason);
        }
    }

    /// <summary>A step of the way: into a member, or into an element. It becomes a text only where something is wrong.</summary>
    private readonly record struct Place(string? Member, int Index)
    {
        public override string ToString() => Member is null
            ? $"[{Index.ToString(CultureInfo.InvariantCulture)}]"
            : Member.Length is > 0 and <= 40 && Member.All(char.IsAsciiLetterOrDigit)
                ? "." + Member
                : $"[{Say.Quote(Member)}]";
    }
}
