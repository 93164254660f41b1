namespace EpisodePlanner.Planning.Files.Shapes;

/// <summary>The members of a record, whatever its type.</summary>
internal interface IRecordShape
{
    /// <summary>The members in the order of declaration.</summary>
    IReadOnlyList<MemberShape> Members { get; }
}
