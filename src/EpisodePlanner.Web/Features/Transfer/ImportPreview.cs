using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Features.Transfer;

/// <summary>What an import would do; nothing is changed by asking.</summary>
internal sealed record ImportPreview
{
    /// <summary>The version of the workshop that the file would replace: send it as If-Match to import; absent for a new workshop.</summary>
    [Range(1, Versions.Most)]
    public long? Version { get; init; }

    /// <summary>The name that the workshop would have.</summary>
    [StringLength(200)]
    public required string Name { get; init; }

    /// <summary>What would happen to each kind of thing.</summary>
    public required ValueList<ImportCount> Kinds { get; init; }

    /// <summary>The next upload as it is planned now; absent where none has a date.</summary>
    public NextUploadView? NextUploadBefore { get; init; }

    /// <summary>The next upload as it would be planned; absent where none has a date.</summary>
    public NextUploadView? NextUploadAfter { get; init; }

    /// <summary>What the plan would have to say, the gravest first.</summary>
    public required ValueList<FindingView> Findings { get; init; }
}

/// <summary>What an import would do to one kind of thing.</summary>
internal sealed record ImportCount
{
    /// <summary>The kind, as the workshop file names the array; about, settings or accepted for parts of the whole.</summary>
    [StringLength(40)]
    public required string Kind { get; init; }

    /// <summary>Things that would come.</summary>
    [Range(0, 1_000_000)]
    public required int Added { get; init; }

    /// <summary>Things that would be changed.</summary>
    [Range(0, 1_000_000)]
    public required int Changed { get; init; }

    /// <summary>Things that would go.</summary>
    [Range(0, 1_000_000)]
    public required int Removed { get; init; }
}

/// <summary>An upload by plan.</summary>
internal sealed record NextUploadView
{
    /// <summary>Its episode.</summary>
    public required Id Episode { get; init; }

    /// <summary>The episode's working title.</summary>
    [StringLength(500)]
    public required string Title { get; init; }

    /// <summary>The public moment.</summary>
    public required Instant Publish { get; init; }

    /// <summary>The next upload of a plan, or null.</summary>
    public static NextUploadView? Of(Plan plan) => plan.NextUpload is { Publish: { } publish } next
        ? new NextUploadView { Episode = next.Id, Title = next.Title, Publish = publish }
        : null;
}

/// <summary>Something a plan has to say.</summary>
internal sealed record FindingView
{
    /// <summary>How grave it is.</summary>
    public required FindingKind Kind { get; init; }

    /// <summary>The place in the workshop.</summary>
    [StringLength(500)]
    public required string Where { get; init; }

    /// <summary>A sentence.</summary>
    [StringLength(2_000)]
    public required string Says { get; init; }

    /// <summary>A finding of a plan.</summary>
    public static FindingView Of(Finding finding) => new() { Kind = finding.Kind, Where = finding.Where, Says = finding.Says };
}
