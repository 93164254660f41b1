using EpisodePlanner.Planning;
using EpisodePlanner.Web.Forms;

namespace EpisodePlanner.Web.Features.Home;

/// <summary>What the first page shows.</summary>
/// <param name="Workshops">The workshops, by name.</param>
/// <param name="Form">The form to begin one.</param>
public sealed record HomeModel(ValueList<HomeLine> Workshops, ValueList<FormField> Form);

/// <summary>A workshop of the first page.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Next">Its next upload, in words.</param>
public sealed record HomeLine(Id Id, string Name, string Next)
{
    /// <summary>Its address in the API.</summary>
    public string Address => $"{Api.Root}/workshops/{Id}";
}
