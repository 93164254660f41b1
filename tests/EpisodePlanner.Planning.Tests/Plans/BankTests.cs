namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Episodes finished and not out, against the target. What is expected is our own contract; counted by hand.</summary>
public sealed class BankTests
{
    // Two series of 4 h each and no tail: both are ready by Tuesday, one goes out on Friday, the other a week later.
    private static Shop Two(int target) => new()
    {
        Settings = $$"""{ "rangeLow": 1, "rangeHigh": 1, "tail": [{ "kind": "everything", "hours": 0 }], "bankTarget": {{target}} }""",
        Series = """
            { "id": "raft", "name": "Raft", "milestones": [{ "id": "floats", "name": "it floats" }] },
            { "id": "buoy", "name": "Buoy", "milestones": [{ "id": "rings", "name": "it rings" }] }
            """,
        Tasks = Shop.Work("build", 4) + ", " + Shop.Work("bell", 4).Replace("floats", "rings", StringComparison.Ordinal),
    };

    [Theory]
    [InlineData(1, "You want 1 episode in the bank; by this plan so many are finished and not out after 1 of 2 uploads, first after that of Friday 12 March.")]
    [InlineData(2, "You want 2 episodes in the bank; by this plan never more than 1 episode is finished and not out after an upload.")]
    public void Findings_BankTarget_SayWhetherItIsMet(int target, string says) =>
        Assert.Equal(says, Assert.Single(Two(target).Plan().Findings, finding => finding.Where == "$.settings.bankTarget").Says);

    [Fact]
    public void Findings_NoTarget_SayNothing() =>
        Assert.DoesNotContain(Two(0).Plan().Findings, finding => finding.Where == "$.settings.bankTarget");
}
