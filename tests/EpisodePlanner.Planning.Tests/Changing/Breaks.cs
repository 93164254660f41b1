namespace EpisodePlanner.Planning.Tests;

/// <summary>Asserts what is said about a broken workshop.</summary>
internal static class Breaks
{
    /// <summary>Exactly one rule is broken, at this place, said in these words.</summary>
    public static void One(Workshop workshop, string where, string says) =>
        Assert.Equal([new Reason(where, says)], WorkshopRules.Check(workshop));

    /// <summary>Rules are broken at these places, and at no others.</summary>
    public static void At(Workshop workshop, params string[] places) =>
        Assert.Equal(places, WorkshopRules.Check(workshop).Select(reason => reason.Where));
}
